package plantair.demand.web;

/**
 * A machine that counts.
 *
 * @param id of the compressor
 * @param tag how the plant calls it
 * @param flow at the pressure of the site, with its uncertainty
 * @param drawn the same for drawing
 * @param measured flow and pressure of the test
 * @param testId the test
 * @param on its day
 * @param largest whether it is the one whose loss is asked about
 */
record MachineRow(
        long id, String tag, String flow, String drawn, String measured, long testId, String on, boolean largest) {}
