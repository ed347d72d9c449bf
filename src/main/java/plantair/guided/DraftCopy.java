package plantair.guided;

import java.util.UUID;

/**
 * A form as a device sends it.
 *
 * @param key the submission that its test will have
 * @param compressorId the machine
 * @param username whose it is
 * @param version the version that the device last had from the server; 0 for none
 * @param content the fields, by {@link DraftContent}
 * @param device the browser, as it calls itself in short
 * @param writer a key that this browser made for itself; empty without script
 */
public record DraftCopy(
        UUID key, long compressorId, String username, int version, String content, String device, String writer) {}
