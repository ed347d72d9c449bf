package plantair.leaktest.web;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import plantair.leak.Decay;
import plantair.leaktest.FoundLeakDraft;
import plantair.leaktest.LeakComponent;
import plantair.leaktest.LeakPriority;
import plantair.leaktest.LeakSize;
import plantair.quantity.Entered;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.LengthUnit;
import plantair.register.EditForm;
import plantair.register.Submission;
import plantair.site.SiteFacts;
import plantair.supply.SizedBy;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about a leak that was found. */
final class FoundLeakForm {

    private static final int LONGEST_TAG = 40;
    private static final int LONGEST_PLACE = 200;
    private static final int LONGEST_NOTE = 2_000;

    private String submission = "";
    private String tag = "";
    private String place = "";
    private String component = "";
    private String sizeBy = "";
    private EnteredField flow = new EnteredField();
    private EnteredField bore = new EnteredField();
    private EnteredField pressure = new EnteredField();
    private String priority = "";
    private String foundOn = "";
    private String foundBy = "";
    private String note = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    static FoundLeakForm blank(UnitSet units, LocalDate today, String person) {
        var form = new FoundLeakForm();
        form.submission = UUID.randomUUID().toString();
        form.flow = EnteredField.blank(units.flow());
        form.bore = EnteredField.blank(units.bore());
        form.pressure = EnteredField.blank(units.pressure());
        form.foundOn = today.toString();
        form.foundBy = person;
        return form;
    }

    /** The leak; empty when something is wrong with what was typed. */
    Optional<FoundLeakDraft> read(Submission sent, long siteId, SiteFacts site, LocalDate today) {
        var checks = sent.checks();
        var typing = new LeakTyping(sent);
        Optional<UUID> mark = typing.submission(submission);
        Optional<String> readTag = checks.text("tag", tag, LONGEST_TAG, true);
        Optional<String> where = checks.text("place", place, LONGEST_PLACE, true);
        Optional<LeakComponent> what = checks.choice("component", component, LeakComponent.class);
        Optional<LeakPriority> urgency = checks.choice("priority", priority, LeakPriority.class);
        Optional<LocalDate> day = typing.past("foundOn", foundOn, today);
        Optional<String> who = checks.text("foundBy", foundBy, 120, true);
        Optional<String> readNote = checks.text("note", note, LONGEST_NOTE, false);
        LeakSize size = size(typing, site);
        if (sent.errors().hasErrors()) {
            return Optional.empty();
        }
        return Optional.of(new FoundLeakDraft(
                mark.orElseThrow(),
                siteId,
                site.zone(),
                readTag.orElseThrow(),
                where.orElseThrow(),
                what.orElseThrow(),
                size,
                urgency.orElseThrow(),
                day.orElseThrow(),
                who.orElseThrow(),
                readNote.orElse("")));
    }

    private LeakSize size(LeakTyping typing, SiteFacts site) {
        Submission sent = typing.sent();
        var checks = sent.checks();
        Optional<SizedBy> by = checks.optionalChoice("sizeBy", sizeBy, SizedBy.class);
        Optional<Entered> flows = checks.positive("flow", checks.optional("flow", flow, FlowUnit.class));
        Optional<Entered> hole = checks.positive("bore", checks.optional("bore", bore, LengthUnit.class));
        Optional<Entered> before = typing.gauge("pressure", pressure, false);
        boolean isHole = by.filter(SizedBy.HOLE::equals).isPresent();
        if (isHole) {
            require(sent, "bore", bore, "foundLeak.hole.incomplete");
            require(sent, "pressure", pressure, "foundLeak.hole.incomplete");
            if (!flow.isBlank()) {
                sent.reject("flow.number", "foundLeak.hole.both");
            }
        } else if (by.isPresent()) {
            require(sent, "flow", flow, "foundLeak.flow.missing");
        } else if (sizeBy.isBlank() && !(flow.isBlank() && bore.isBlank())) {
            sent.reject("sizeBy", "foundLeak.sizeBy.missing");
        }
        var size = new LeakSize(
                by.orElse(null),
                isHole ? null : flows.orElse(null),
                isHole ? hole.orElse(null) : null,
                before.orElse(null),
                site.elevation(),
                site.barometer());
        if (isHole && before.isPresent() && !Decay.isChokedAt(GaugePressure.of(before.get()), size.station())) {
            sent.reject("pressure.number", "foundLeak.pressure.low");
        }
        return size;
    }

    private static void require(Submission sent, String path, EnteredField field, String code) {
        if (field.isBlank()) {
            sent.reject(path + ".number", code);
        }
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(String submission) {
        this.submission = submission;
    }

    public String getTag() {
        return tag;
    }

    public void setTag(String tag) {
        this.tag = tag;
    }

    public String getPlace() {
        return place;
    }

    public void setPlace(String place) {
        this.place = place;
    }

    public String getComponent() {
        return component;
    }

    public void setComponent(String component) {
        this.component = component;
    }

    public String getSizeBy() {
        return sizeBy;
    }

    public void setSizeBy(String sizeBy) {
        this.sizeBy = sizeBy;
    }

    public EnteredField getFlow() {
        return flow;
    }

    public EnteredField getBore() {
        return bore;
    }

    public EnteredField getPressure() {
        return pressure;
    }

    public String getPriority() {
        return priority;
    }

    public void setPriority(String priority) {
        this.priority = priority;
    }

    public String getFoundOn() {
        return foundOn;
    }

    public void setFoundOn(String foundOn) {
        this.foundOn = foundOn;
    }

    public String getFoundBy() {
        return foundBy;
    }

    public void setFoundBy(String foundBy) {
        this.foundBy = foundBy;
    }

    public String getNote() {
        return note;
    }

    public void setNote(String note) {
        this.note = note;
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
