package plantair.testrecord;

/**
 * The certificate that restates a test.
 *
 * @param testId the test
 * @param number of the certificate, as typed; may be empty
 */
public record RestatingCertificate(long testId, String number) {}
