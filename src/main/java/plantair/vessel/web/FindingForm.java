package plantair.vessel.web;

import java.util.Optional;
import java.util.UUID;
import plantair.register.EditForm;
import plantair.register.Submission;
import plantair.vessel.FindingDraft;
import plantair.vessel.FindingKind;
import plantair.vessel.VesselFinding;

/** What a person types about damage that was seen, or mended. */
final class FindingForm {

    private String submission = "";
    private String foundOn = "";
    private String kind = "";
    private String note = "";
    private EditForm edit = new EditForm();

    static FindingForm blank() {
        var form = new FindingForm();
        form.submission = UUID.randomUUID().toString();
        return form;
    }

    /** Damage; empty when something is wrong with what was typed. */
    Optional<FindingDraft> read(Submission sent, Vessel vessel) {
        var seen = sent.checks().choice("kind", kind, FindingKind.class);
        var readNote = sent.checks().text("note", note, 4_000, false);
        if (seen.equals(Optional.of(FindingKind.OTHER)) && note.isBlank()) {
            sent.reject("note", "finding.note.missing");
        }
        return draft(sent, vessel, seen, readNote);
    }

    /** The word that damage is mended; empty when something is wrong with what was typed. */
    Optional<FindingDraft> readCleared(Submission sent, Vessel vessel, VesselFinding cleared) {
        var readNote = sent.checks().text("note", note, 4_000, false);
        if (note.isBlank()) {
            sent.reject("note", "finding.clear.missing");
        }
        Optional<FindingDraft> draft = draft(sent, vessel, Optional.of(cleared.kind()), readNote);
        if (draft.isPresent() && draft.get().foundOn().isBefore(cleared.foundOn())) {
            sent.reject("foundOn", "finding.clear.early", cleared.foundOn().toString());
        }
        return draft;
    }

    private Optional<FindingDraft> draft(
            Submission sent, Vessel vessel, Optional<FindingKind> seen, Optional<String> readNote) {
        var typing = new Typing(sent);
        var mark = typing.submission(submission);
        var day = typing.past("foundOn", foundOn, vessel.today(), true);
        return mark.isEmpty() || day.isEmpty() || seen.isEmpty()
                ? Optional.empty()
                : Optional.of(new FindingDraft(mark.get(), vessel.id(), day.get(), seen.get(), readNote.orElse("")));
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(String submission) {
        this.submission = submission;
    }

    public String getFoundOn() {
        return foundOn;
    }

    public void setFoundOn(String foundOn) {
        this.foundOn = foundOn;
    }

    public String getKind() {
        return kind;
    }

    public void setKind(String kind) {
        this.kind = kind;
    }

    public String getNote() {
        return note;
    }

    public void setNote(String note) {
        this.note = note;
    }

    public EditForm getEdit() {
        return edit;
    }
}
