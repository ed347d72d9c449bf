package plantair.runlog.web;

import plantair.quantity.Unit;
import plantair.web.EnteredField;

/** Form bean of the pressure at which a flow is asked for. */
public final class AtForm {

    private EnteredField at = new EnteredField();

    static AtForm blank(Unit unit) {
        var form = new AtForm();
        form.at = EnteredField.blank(unit);
        return form;
    }

    public EnteredField getAt() {
        return at;
    }

    public void setAt(EnteredField at) {
        this.at = at;
    }
}
