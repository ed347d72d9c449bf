package plantair.vessel.web;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import plantair.register.EditForm;
import plantair.register.Submission;
import plantair.vessel.CertificateFacts;
import plantair.vessel.VesselCertificate;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about a certificate or permit. */
final class CertificateForm {

    private String number = "";
    private String issuedBy = "";
    private String issuedOn = "";
    private EnteredField permitted = new EnteredField();
    private String validTo = "";
    private String note = "";
    private String inForce = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    static CertificateForm blank(UnitSet units) {
        var form = new CertificateForm();
        form.permitted = EnteredField.blank(units.pressure());
        form.inForce = "true";
        return form;
    }

    static CertificateForm from(VesselCertificate certificate, UnitSet units) {
        var facts = certificate.facts();
        var form = new CertificateForm();
        form.number = facts.number();
        form.issuedBy = facts.issuedBy();
        form.issuedOn = facts.issuedOn().toString();
        form.permitted = EnteredField.of(facts.permitted(), units.pressure());
        form.validTo = Objects.toString(facts.validTo(), "");
        form.note = facts.note();
        form.inForce = String.valueOf(facts.inForce());
        form.edit = EditForm.of(certificate);
        return form;
    }

    /** The facts; empty when something is wrong with what was typed. */
    Optional<CertificateFacts> read(Submission sent, Vessel vessel) {
        var checks = sent.checks();
        var typing = new Typing(sent);
        var readNumber = checks.text("number", number, 80, true);
        var issuer = checks.text("issuedBy", issuedBy, 120, true);
        var issued = typing.past("issuedOn", issuedOn, vessel.today(), true);
        var pressure = typing.pressure("permitted", permitted, false);
        var until = checks.date("validTo", validTo, false);
        var readNote = checks.text("note", note, 4_000, false);
        if (readNumber.isEmpty() || issuer.isEmpty() || issued.isEmpty()) {
            return Optional.empty();
        }
        checkDays(sent, issued.get(), until, vessel.today());
        pressure.ifPresent(
                typed -> typing.askAbove("permitted", typed, vessel.mawp(), "certificate.permitted.aboveMawp"));
        return Optional.of(new CertificateFacts(
                readNumber.get(),
                issuer.get(),
                issued.get(),
                pressure.orElse(null),
                until.orElse(null),
                readNote.orElse(""),
                Boolean.parseBoolean(inForce)));
    }

    private void checkDays(Submission sent, LocalDate issued, Optional<LocalDate> until, LocalDate today) {
        if (until.isPresent() && until.get().isBefore(issued)) {
            sent.reject("validTo", "certificate.validTo.early");
        } else if (until.isPresent() && until.get().isBefore(today) && Boolean.parseBoolean(inForce)) {
            sent.warnings().add("validTo", "receiver.certificateDue.past");
        }
    }

    public String getNumber() {
        return number;
    }

    public void setNumber(String number) {
        this.number = number;
    }

    public String getIssuedBy() {
        return issuedBy;
    }

    public void setIssuedBy(String issuedBy) {
        this.issuedBy = issuedBy;
    }

    public String getIssuedOn() {
        return issuedOn;
    }

    public void setIssuedOn(String issuedOn) {
        this.issuedOn = issuedOn;
    }

    public EnteredField getPermitted() {
        return permitted;
    }

    public String getValidTo() {
        return validTo;
    }

    public void setValidTo(String validTo) {
        this.validTo = validTo;
    }

    public String getNote() {
        return note;
    }

    public void setNote(String note) {
        this.note = note;
    }

    public String getInForce() {
        return inForce;
    }

    public void setInForce(String inForce) {
        this.inForce = inForce;
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
