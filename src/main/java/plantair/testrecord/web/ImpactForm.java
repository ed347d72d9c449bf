package plantair.testrecord.web;

import org.jspecify.annotations.Nullable;
import plantair.web.Person;

/** Form bean of a signature under a restatement. */
public final class ImpactForm {

    private String by = "";
    private String note = "";

    static ImpactForm by(Person person) {
        var form = new ImpactForm();
        form.by = person.name();
        return form;
    }

    public String getBy() {
        return by;
    }

    public void setBy(@Nullable String by) {
        this.by = by == null ? "" : by;
    }

    public String getNote() {
        return note;
    }

    public void setNote(@Nullable String note) {
        this.note = note == null ? "" : note;
    }
}
