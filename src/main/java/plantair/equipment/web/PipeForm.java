package plantair.equipment.web;

import java.util.Optional;
import plantair.equipment.PipeFacts;
import plantair.equipment.PipePiece;
import plantair.quantity.LengthUnit;
import plantair.quantity.VolumeUnit;
import plantair.register.EditForm;
import plantair.register.Submission;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about a pipe piece. */
final class PipeForm {

    private String site = "";
    private String tag = "";
    private EnteredField length = new EnteredField();
    private EnteredField bore = new EnteredField();
    private EnteredField volume = new EnteredField();
    private String note = "";
    private String inService = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    static PipeForm blank(String site, UnitSet units) {
        var form = new PipeForm();
        form.site = site;
        form.length = EnteredField.blank(units.elevation());
        form.bore = EnteredField.blank(units.bore());
        form.volume = EnteredField.blank(units.vessel());
        form.inService = "true";
        form.edit = new EditForm();
        return form;
    }

    static PipeForm from(PipePiece pipe, UnitSet units) {
        var facts = pipe.facts();
        var form = new PipeForm();
        form.tag = facts.tag();
        form.length = EnteredField.of(facts.length(), units.elevation());
        form.bore = EnteredField.of(facts.bore(), units.bore());
        form.volume = EnteredField.of(facts.volume(), units.vessel());
        form.note = facts.note();
        form.inService = String.valueOf(facts.inService());
        form.edit = EditForm.of(pipe);
        return form;
    }

    /** The facts; empty when something is wrong with what was typed. */
    Optional<PipeFacts> read(Submission sent) {
        var readTag = sent.checks().text("tag", tag, 40, true);
        var readNote = sent.checks().text("note", note, 4_000, false);
        var size = volume.isBlank() ? readPipe(sent) : readVolume(sent);
        if (readTag.isEmpty() || size.isEmpty()) {
            return Optional.empty();
        }
        var facts = size.get();
        return Optional.of(new PipeFacts(
                readTag.get(),
                facts.length(),
                facts.bore(),
                facts.volume(),
                readNote.orElse(""),
                Boolean.parseBoolean(inService)));
    }

    private Optional<PipeFacts> readPipe(Submission sent) {
        if (length.isBlank() && bore.isBlank()) {
            sent.reject("length.number", "pipe.size.missing");
            return Optional.empty();
        }
        var typing = new Typing(sent);
        var readLength = typing.required("length", length, LengthUnit.class, Usual.LENGTH);
        var readBore = typing.required("bore", bore, LengthUnit.class, Usual.BORE);
        return readLength.flatMap(
                typedLength -> readBore.map(typedBore -> new PipeFacts("", typedLength, typedBore, null, "", true)));
    }

    private Optional<PipeFacts> readVolume(Submission sent) {
        if (!length.isBlank() || !bore.isBlank()) {
            sent.reject("volume.number", "pipe.size.twice");
            return Optional.empty();
        }
        return new Typing(sent)
                .required("volume", volume, VolumeUnit.class, Usual.PIECE)
                .map(typed -> new PipeFacts("", null, null, typed, "", true));
    }

    public String getSite() {
        return site;
    }

    public void setSite(String site) {
        this.site = site;
    }

    public String getTag() {
        return tag;
    }

    public void setTag(String tag) {
        this.tag = tag;
    }

    public EnteredField getLength() {
        return length;
    }

    public EnteredField getBore() {
        return bore;
    }

    public EnteredField getVolume() {
        return volume;
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
