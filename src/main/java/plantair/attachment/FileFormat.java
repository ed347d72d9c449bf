package plantair.attachment;

/** What a file may be, told from its bytes and never from its name. */
public enum FileFormat {
    /** A photo. */
    JPEG("image/jpeg", "jpg"),
    /** A picture, as of a screen. */
    PNG("image/png", "png"),
    /** A paper. */
    PDF("application/pdf", "pdf");

    private final String mediaType;
    private final String ending;

    FileFormat(String mediaType, String ending) {
        this.mediaType = mediaType;
        this.ending = ending;
    }

    /** How a browser is told. */
    public String mediaType() {
        return mediaType;
    }

    /** How the name of such a file ends, without dot. */
    public String ending() {
        return ending;
    }

    /** Whether a page can show it. */
    public boolean isPicture() {
        return this != PDF;
    }
}
