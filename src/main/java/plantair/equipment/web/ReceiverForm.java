package plantair.equipment.web;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.equipment.Receiver;
import plantair.equipment.ReceiverFacts;
import plantair.equipment.VolumeKnownBy;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.LengthUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.VolumeUnit;
import plantair.register.EditForm;
import plantair.register.Submission;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about a receiver. */
final class ReceiverForm {

    private String site = "";
    private String tag = "";
    private EnteredField volume = new EnteredField();
    private String volumeKnownBy = "";
    private EnteredField mawp = new EnteredField();
    private EnteredField reliefSet = new EnteredField();
    private String certificateDue = "";
    private EnteredField cutOut = new EnteredField();
    private String certificateRequired = "";
    private EnteredField shellRequired = new EnteredField();
    private EnteredField headRequired = new EnteredField();
    private String note = "";
    private String inService = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    static ReceiverForm blank(String site, UnitSet units) {
        var form = new ReceiverForm();
        form.site = site;
        form.volume = EnteredField.blank(units.vessel());
        form.mawp = EnteredField.blank(units.pressure());
        form.reliefSet = EnteredField.blank(units.pressure());
        form.cutOut = EnteredField.blank(units.pressure());
        form.shellRequired = EnteredField.blank(units.bore());
        form.headRequired = EnteredField.blank(units.bore());
        form.inService = "true";
        form.edit = new EditForm();
        return form;
    }

    static ReceiverForm from(Receiver receiver, UnitSet units) {
        var facts = receiver.facts();
        var form = new ReceiverForm();
        form.tag = facts.tag();
        form.volume = EnteredField.of(facts.volume(), units.vessel());
        form.volumeKnownBy = facts.volumeKnownBy().name();
        form.mawp = EnteredField.of(facts.mawp(), units.pressure());
        form.reliefSet = EnteredField.of(facts.reliefSet(), units.pressure());
        form.certificateDue = Objects.toString(facts.certificateDue(), "");
        form.cutOut = EnteredField.of(facts.cutOut(), units.pressure());
        form.certificateRequired = Required.of(facts.certificateRequired());
        form.shellRequired = EnteredField.of(facts.shellRequired(), units.bore());
        form.headRequired = EnteredField.of(facts.headRequired(), units.bore());
        form.note = facts.note();
        form.inService = String.valueOf(facts.inService());
        form.edit = EditForm.of(receiver);
        return form;
    }

    /** Whether the plant says that a certificate is needed. */
    enum Required {
        YES,
        NO;

        private static String of(@Nullable Boolean required) {
            return required == null ? "" : (required ? YES : NO).name();
        }
    }

    /**
     * The facts; empty when something is wrong with what was typed.
     *
     * @param today the date at the receiver
     */
    Optional<ReceiverFacts> read(Submission sent, LocalDate today) {
        var checks = sent.checks();
        var typing = new Typing(sent);
        var readTag = checks.text("tag", tag, 40, true);
        var readVolume = typing.required("volume", volume, VolumeUnit.class, Usual.RECEIVER);
        var knownBy = checks.choice("volumeKnownBy", volumeKnownBy, VolumeKnownBy.class);
        var readMawp = typing.optional("mawp", mawp, PressureUnit.class, Usual.PRESSURE);
        var relief = typing.optional("reliefSet", reliefSet, PressureUnit.class, Usual.PRESSURE);
        var due = checks.date("certificateDue", certificateDue, false);
        var stopsAt = typing.optional("cutOut", cutOut, PressureUnit.class, Usual.PRESSURE);
        var required = checks.optionalChoice("certificateRequired", certificateRequired, Required.class);
        var shell = typing.optional("shellRequired", shellRequired, LengthUnit.class, Usual.WALL);
        var head = typing.optional("headRequired", headRequired, LengthUnit.class, Usual.WALL);
        var readNote = checks.text("note", note, 4_000, false);
        if (readTag.isEmpty() || readVolume.isEmpty() || knownBy.isEmpty()) {
            return Optional.empty();
        }
        var facts = new ReceiverFacts(
                readTag.get(),
                readVolume.get(),
                knownBy.get(),
                readMawp.orElse(null),
                relief.orElse(null),
                due.orElse(null),
                stopsAt.orElse(null),
                required.map(Required.YES::equals).orElse(null),
                shell.orElse(null),
                head.orElse(null),
                readNote.orElse(""),
                Boolean.parseBoolean(inService));
        warn(sent, facts, today);
        return Optional.of(facts);
    }

    private static void warn(Submission sent, ReceiverFacts facts, LocalDate today) {
        if (isAbove(facts.reliefSet(), facts.mawp())) {
            sent.warnings().add("reliefSet", "receiver.reliefSet.aboveMawp");
        }
        if (isAbove(facts.cutOut(), facts.mawp())) {
            sent.warnings().add("cutOut", "receiver.cutOut.aboveMawp");
        }
        if (facts.certificateDue() != null && facts.certificateDue().isBefore(today)) {
            sent.warnings().add("certificateDue", "receiver.certificateDue.past");
        }
    }

    private static boolean isAbove(@Nullable Entered a, @Nullable Entered b) {
        return a != null
                && b != null
                && GaugePressure.of(a).pascals() > GaugePressure.of(b).pascals();
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

    public EnteredField getVolume() {
        return volume;
    }

    public String getVolumeKnownBy() {
        return volumeKnownBy;
    }

    public void setVolumeKnownBy(String volumeKnownBy) {
        this.volumeKnownBy = volumeKnownBy;
    }

    public EnteredField getMawp() {
        return mawp;
    }

    public EnteredField getReliefSet() {
        return reliefSet;
    }

    public String getCertificateDue() {
        return certificateDue;
    }

    public void setCertificateDue(String certificateDue) {
        this.certificateDue = certificateDue;
    }

    public EnteredField getCutOut() {
        return cutOut;
    }

    public String getCertificateRequired() {
        return certificateRequired;
    }

    public void setCertificateRequired(String certificateRequired) {
        this.certificateRequired = certificateRequired;
    }

    public EnteredField getShellRequired() {
        return shellRequired;
    }

    public EnteredField getHeadRequired() {
        return headRequired;
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
