package plantair.vessel.web;

import java.util.Objects;
import java.util.Optional;
import plantair.quantity.Entered;
import plantair.quantity.FlowUnit;
import plantair.register.EditForm;
import plantair.register.Submission;
import plantair.vessel.ReliefValve;
import plantair.vessel.ValveFacts;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about a relief valve. */
final class ValveForm {

    private String tag = "";
    private EnteredField setPressure = new EnteredField();
    private EnteredField capacity = new EnteredField();
    private String codeStamp = "";
    private String installedOn = "";
    private String note = "";
    private String inService = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    static ValveForm blank(UnitSet units) {
        var form = new ValveForm();
        form.setPressure = EnteredField.blank(units.pressure());
        form.capacity = EnteredField.blank(units.flow());
        form.inService = "true";
        return form;
    }

    static ValveForm from(ReliefValve valve, UnitSet units) {
        var facts = valve.facts();
        var form = new ValveForm();
        form.tag = facts.tag();
        form.setPressure = EnteredField.of(facts.setPressure(), units.pressure());
        form.capacity = EnteredField.of(facts.capacity(), units.flow());
        form.codeStamp = facts.codeStamp();
        form.installedOn = Objects.toString(facts.installedOn(), "");
        form.note = facts.note();
        form.inService = String.valueOf(facts.inService());
        form.edit = EditForm.of(valve);
        return form;
    }

    /** The facts; empty when something is wrong with what was typed. */
    Optional<ValveFacts> read(Submission sent, Vessel vessel) {
        var checks = sent.checks();
        var typing = new Typing(sent);
        var readTag = checks.text("tag", tag, 40, true);
        Optional<Entered> set = typing.pressure("setPressure", setPressure, true);
        var flow = checks.positive("capacity", checks.optional("capacity", capacity, FlowUnit.class));
        var stamp = checks.text("codeStamp", codeStamp, 80, false);
        var since = typing.past("installedOn", installedOn, vessel.today(), false);
        var readNote = checks.text("note", note, 4_000, false);
        if (readTag.isEmpty() || set.isEmpty()) {
            return Optional.empty();
        }
        typing.askAbove("setPressure", set.get(), vessel.mawp(), "valve.setPressure.aboveMawp");
        return Optional.of(new ValveFacts(
                readTag.get(),
                set.get(),
                flow.orElse(null),
                stamp.orElse(""),
                since.orElse(null),
                readNote.orElse(""),
                Boolean.parseBoolean(inService)));
    }

    public String getTag() {
        return tag;
    }

    public void setTag(String tag) {
        this.tag = tag;
    }

    public EnteredField getSetPressure() {
        return setPressure;
    }

    public EnteredField getCapacity() {
        return capacity;
    }

    public String getCodeStamp() {
        return codeStamp;
    }

    public void setCodeStamp(String codeStamp) {
        this.codeStamp = codeStamp;
    }

    public String getInstalledOn() {
        return installedOn;
    }

    public void setInstalledOn(String installedOn) {
        this.installedOn = installedOn;
    }

    public String getNote() {
        return note;
    }

    public void setNote(String note) {
        this.note = note;
    }

    public String getInService() {
        return inService;
    }

    public void setInService(String inService) {
        this.inService = inService;
    }

    public String getConfirmed() {
        return confirmed;
    }

    public void setConfirmed(String confirmed) {
        this.confirmed = confirmed;
    }

    public EditForm getEdit() {
        return edit;
    }
}
