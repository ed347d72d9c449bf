package plantair.equipment;

/**
 * What a list to choose from says of a compressor.
 *
 * @param id its number
 * @param site name of its site
 * @param tag its tag
 */
public record CompressorName(long id, String site, String tag) {}
