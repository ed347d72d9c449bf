package plantair.leaktest.web;

import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import plantair.leaktest.FallReading;
import plantair.leaktest.LeakPlace;
import plantair.leaktest.LeakTestDraft;
import plantair.leaktest.LeakTestKind;
import plantair.pumpup.VolumePart;
import plantair.quantity.DurationUnit;
import plantair.quantity.FixedUnit;
import plantair.register.EditForm;
import plantair.testrecord.VolumeCopy;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** Form bean of a leak test; everything is text, so that what was typed always stays. */
final class LeakTestForm {

    /** As many as a form offers. */
    static final int MOST_CYCLES = 30;

    static final int MOST_ROWS = 40;
    private static final int USUAL_CYCLES = 5;
    private static final int USUAL_ROWS = 6;

    private String submission = "";
    private String kind = "";
    private String place = "";
    private String compressor = "";
    private String date = "";
    private String time = "";
    private String tester = "";
    private String usersOff = "";
    private String drainsOff = "";
    private EnteredField atPressure = new EnteredField();
    private EnteredField barometer = new EnteredField();
    private final List<CycleRow> cycles = new ArrayList<>();
    private final List<MachineRow> machines = new ArrayList<>();
    private List<String> receivers = new ArrayList<>();
    private List<String> pipes = new ArrayList<>();
    private EnteredField volume = new EnteredField();
    private EnteredField volumePercent = new EnteredField();
    private EnteredField division = new EnteredField();
    private EnteredField first = new EnteredField();
    private EnteredField last = new EnteredField();
    private EnteredField waited = new EnteredField();
    private final List<FallRow> readings = new ArrayList<>();
    private String pasted = "";
    private String pastedTime = DurationUnit.SECOND.code();
    private String pastedPressure = "";
    private String leaveEarly = "";
    private String note = "";
    private String withdrawn = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    private static LeakTestForm empty(LeakTestKind kind, UnitSet units) {
        var form = new LeakTestForm();
        form.submission = UUID.randomUUID().toString();
        form.kind = kind.name();
        form.atPressure = EnteredField.blank(units.pressure());
        form.barometer = EnteredField.blank(units.barometer());
        form.volume = EnteredField.blank(units.vessel());
        form.volumePercent = EnteredField.blank(FixedUnit.PERCENT);
        form.division = EnteredField.blank(units.pressure());
        form.first = EnteredField.blank(units.pressure());
        form.last = EnteredField.blank(units.pressure());
        form.waited = EnteredField.blank(DurationUnit.MINUTE);
        form.pastedPressure = units.pressure().code();
        return form;
    }

    /** A form for a test made just now. */
    static LeakTestForm blank(LeakTestKind kind, UnitSet units, ZoneId zone, Instant now, String person) {
        var form = empty(kind, units);
        form.place = LeakPlace.WHOLE_SYSTEM.name();
        form.when(now.truncatedTo(ChronoUnit.MINUTES), zone);
        form.tester = person;
        form.moreCycles(USUAL_CYCLES);
        form.moreReadings(USUAL_ROWS, units);
        return form;
    }

    /** For a correction. */
    static LeakTestForm from(LeakTestDraft test, UnitSet units) {
        var form = empty(test.kind(), units);
        var state = test.state();
        form.place = test.place().name();
        form.compressor = Objects.toString(test.compressorId(), "");
        form.when(test.performedAt(), ZoneId.of(test.zone()));
        form.tester = test.tester();
        form.usersOff = String.valueOf(state.usersOff());
        form.drainsOff = String.valueOf(state.drainsOff());
        form.atPressure = EnteredField.of(state.atPressure(), units.pressure());
        form.barometer = EnteredField.of(state.barometer(), units.barometer());
        form.volume = EnteredField.of(state.volume(), units.vessel());
        form.volumePercent = EnteredField.of(state.volumePercent(), FixedUnit.PERCENT);
        form.division = EnteredField.of(state.division(), units.pressure());
        form.leaveEarly = String.valueOf(state.leaveEarly());
        form.note = test.note();
        test.cycles().forEach(cycle -> form.cycles.add(CycleRow.from(cycle)));
        form.choose(test.volumes());
        form.fill(test, units);
        return form;
    }

    private void when(Instant at, ZoneId zone) {
        var local = at.atZone(zone);
        date = local.toLocalDate().toString();
        time = local.toLocalTime().truncatedTo(ChronoUnit.MINUTES).toString();
    }

    private void choose(List<VolumeCopy> volumes) {
        for (VolumeCopy copy : volumes) {
            var chosen = copy.kind() == VolumePart.Kind.RECEIVER ? receivers : pipes;
            chosen.add(String.valueOf(copy.sourceId()));
        }
    }

    private void fill(LeakTestDraft test, UnitSet units) {
        List<FallReading> typed = test.readings();
        if (test.kind() == LeakTestKind.TWO_READINGS) {
            first = EnteredField.of(typed.get(0).pressure(), units.pressure());
            last = EnteredField.of(typed.get(1).pressure(), units.pressure());
            waited = EnteredField.of(typed.get(1).atTime(), DurationUnit.MINUTE);
        } else if (typed.size() <= MOST_ROWS) {
            typed.forEach(reading -> readings.add(FallRow.from(reading, units)));
        } else {
            pasted = PastedReadings.text(typed);
            pastedTime = PastedReadings.timeUnit(typed).code();
            pastedPressure = typed.get(0).pressure().unit().code();
        }
    }

    /** The rows of the form's kind, more of them. */
    void more(UnitSet units) {
        if (kind.equals(LeakTestKind.LOAD_TIMES.name())) {
            moreCycles(USUAL_CYCLES);
        } else {
            moreReadings(USUAL_ROWS, units);
        }
    }

    private void moreCycles(int more) {
        for (int i = 0; i < more && cycles.size() < MOST_CYCLES; i++) {
            cycles.add(new CycleRow());
        }
    }

    private void moreReadings(int more, UnitSet units) {
        for (int i = 0; i < more && readings.size() < MOST_ROWS; i++) {
            readings.add(FallRow.blank(units));
        }
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(String submission) {
        this.submission = submission;
    }

    public String getKind() {
        return kind;
    }

    public void setKind(String kind) {
        this.kind = kind;
    }

    public String getPlace() {
        return place;
    }

    public void setPlace(String place) {
        this.place = place;
    }

    public String getCompressor() {
        return compressor;
    }

    public void setCompressor(String compressor) {
        this.compressor = compressor;
    }

    public String getDate() {
        return date;
    }

    public void setDate(String date) {
        this.date = date;
    }

    public String getTime() {
        return time;
    }

    public void setTime(String time) {
        this.time = time;
    }

    public String getTester() {
        return tester;
    }

    public void setTester(String tester) {
        this.tester = tester;
    }

    public String getUsersOff() {
        return usersOff;
    }

    public void setUsersOff(String usersOff) {
        this.usersOff = usersOff;
    }

    public String getDrainsOff() {
        return drainsOff;
    }

    public void setDrainsOff(String drainsOff) {
        this.drainsOff = drainsOff;
    }

    public EnteredField getAtPressure() {
        return atPressure;
    }

    public EnteredField getBarometer() {
        return barometer;
    }

    public List<CycleRow> getCycles() {
        return cycles;
    }

    public List<MachineRow> getMachines() {
        return machines;
    }

    public List<String> getReceivers() {
        return receivers;
    }

    public void setReceivers(List<String> receivers) {
        this.receivers = receivers;
    }

    public List<String> getPipes() {
        return pipes;
    }

    public void setPipes(List<String> pipes) {
        this.pipes = pipes;
    }

    public EnteredField getVolume() {
        return volume;
    }

    public EnteredField getVolumePercent() {
        return volumePercent;
    }

    public EnteredField getDivision() {
        return division;
    }

    public EnteredField getFirst() {
        return first;
    }

    public EnteredField getLast() {
        return last;
    }

    public EnteredField getWaited() {
        return waited;
    }

    public List<FallRow> getReadings() {
        return readings;
    }

    public String getPasted() {
        return pasted;
    }

    public void setPasted(String pasted) {
        this.pasted = pasted;
    }

    public String getPastedTime() {
        return pastedTime;
    }

    public void setPastedTime(String pastedTime) {
        this.pastedTime = pastedTime;
    }

    public String getPastedPressure() {
        return pastedPressure;
    }

    public void setPastedPressure(String pastedPressure) {
        this.pastedPressure = pastedPressure;
    }

    public String getLeaveEarly() {
        return leaveEarly;
    }

    public void setLeaveEarly(String leaveEarly) {
        this.leaveEarly = leaveEarly;
    }

    public String getNote() {
        return note;
    }

    public void setNote(String note) {
        this.note = note;
    }

    public String getWithdrawn() {
        return withdrawn;
    }

    public void setWithdrawn(String withdrawn) {
        this.withdrawn = withdrawn;
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
