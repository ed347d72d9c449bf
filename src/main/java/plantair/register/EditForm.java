package plantair.register;

/** Part of every form of a register: why, and which version was looked at. Paths begin with {@code edit.} */
public final class EditForm {

    private String reason = "";
    private String version = "";

    /** For a change of a thing. */
    public static EditForm of(Registered<?> thing) {
        var form = new EditForm();
        form.version = String.valueOf(thing.version());
        return form;
    }

    public String getReason() {
        return reason;
    }

    public void setReason(String reason) {
        this.reason = reason;
    }

    /** The version that was looked at; 0 when what was sent is no number. */
    int seenVersion() {
        return version.matches("\\d{1,9}") ? Integer.parseInt(version) : 0;
    }

    public String getVersion() {
        return version;
    }

    public void setVersion(String version) {
        this.version = version;
    }
}
