package plantair.testrecord;

/**
 * A test and a calibration that restates it.
 *
 * @param testId the test
 * @param calibrationId the calibration
 */
record RestatedTest(long testId, long calibrationId) {}
