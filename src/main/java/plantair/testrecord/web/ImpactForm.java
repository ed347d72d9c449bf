package plantair.testrecord.web;

import org.jspecify.annotations.Nullable;

/** Form bean of a signature under a restatement. */
public final class ImpactForm {

    private String note = "";

    public String getNote() {
        return note;
    }

    public void setNote(@Nullable String note) {
        this.note = note == null ? "" : note;
    }
}
