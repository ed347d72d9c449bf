package plantair.register;

import plantair.web.Person;

/** Part of every form of a register: who signs, why, and which version was looked at. Paths begin with {@code edit.} */
public final class EditForm {

    private String who = "";
    private String reason = "";
    private String version = "";

    /** For a new thing. */
    public static EditForm by(Person person) {
        var form = new EditForm();
        form.who = person.name();
        return form;
    }

    /** For a change of a thing. */
    public static EditForm of(Registered<?> thing, Person person) {
        var form = by(person);
        form.version = String.valueOf(thing.version());
        return form;
    }

    public String getWho() {
        return who;
    }

    public void setWho(String who) {
        this.who = who;
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
