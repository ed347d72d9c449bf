package plantair.testrecord.web;

import java.time.Clock;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.modulith.NamedInterface;
import plantair.instrument.InstrumentKind;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.VolumePart;
import plantair.quantity.FixedUnit;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.TestChecks;
import plantair.testrecord.VolumeCopy;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** Form bean of a pump-up test; everything is text, so that what was typed always stays. A guided test adds to it. */
@NamedInterface("form")
public class TestForm {

    /** Runs that a new form shows; fewer are a weak test. */
    private static final int USUAL_RUNS = 3;

    /** More are not taken. */
    static final int MOST_RUNS = 12;

    private String submission = "";
    private String date = "";
    private String time = "";
    private String tester = "";
    private String airTemperature = "";
    private String notes = "";
    private String confirmed = "";
    private String reason = "";
    private String lockReason = "";
    private EnteredField barometer = new EnteredField();
    private EnteredField intakeTemperature = new EnteredField();
    private EnteredField intakeHumidity = new EnteredField();
    private EnteredField water = new EnteredField();
    private EnteredField speed = new EnteredField();
    private String gauge = "";
    private String timer = "";
    private String thermometer = "";
    private String barometerUsed = "";
    private String overrideReason = "";
    private String anywhere = "";
    private ChecksForm checks = new ChecksForm();
    private List<String> receivers = new ArrayList<>();
    private List<String> pipes = new ArrayList<>();
    private List<RunForm> runs = new ArrayList<>();

    /** A form for a test made just now, with the receivers of the machine's last test. */
    static TestForm blank(UnitSet units, ZoneId zone, Clock clock, String person, List<VolumeCopy> lastVolumes) {
        var form = new TestForm();
        form.begin(units, zone, clock, person, lastVolumes);
        return form;
    }

    /** Fills a form for a test made just now, with the receivers of the machine's last test. */
    public final void begin(UnitSet units, ZoneId zone, Clock clock, String person, List<VolumeCopy> lastVolumes) {
        var now = clock.instant().atZone(zone).truncatedTo(ChronoUnit.MINUTES);
        date = now.toLocalDate().toString();
        time = now.toLocalTime().toString();
        tester = person;
        airTemperature = AirTemperature.MEASURED.name();
        conditions(units);
        choose(lastVolumes);
        for (int i = 0; i < USUAL_RUNS; i++) {
            addRun(units);
        }
    }

    /** A form that holds a recorded test, to be corrected. */
    static TestForm from(PumpUpTest test, UnitSet units) {
        var form = new TestForm();
        var at = test.performedAt().atZone(test.zone());
        form.date = at.toLocalDate().toString();
        form.time = at.toLocalTime().truncatedTo(ChronoUnit.MINUTES).toString();
        form.tester = test.tester();
        form.airTemperature = test.conditions().airTemperature().name();
        form.conditions(units);
        form.intakeTemperature = EnteredField.of(test.conditions().intakeTemperature(), units.temperature());
        form.intakeHumidity = EnteredField.of(test.conditions().intakeHumidity(), FixedUnit.PERCENT);
        form.barometer = EnteredField.of(test.conditions().barometer(), units.barometer());
        form.water = EnteredField.of(test.conditions().water(), units.vessel());
        form.speed = EnteredField.of(test.conditions().speed(), FixedUnit.RPM);
        form.checks = ChecksForm.of(test.checks(), units);
        form.name(test.instruments());
        form.overrideReason = text(test.overrideReason());
        form.notes = test.notes();
        form.choose(test.volumes());
        test.runs().forEach(run -> form.runs.add(RunForm.from(run, units)));
        return form;
    }

    private void conditions(UnitSet units) {
        submission = UUID.randomUUID().toString();
        barometer = EnteredField.blank(units.barometer());
        intakeTemperature = EnteredField.blank(units.temperature());
        intakeHumidity = EnteredField.blank(FixedUnit.PERCENT);
        water = EnteredField.blank(units.vessel());
        speed = EnteredField.blank(FixedUnit.RPM);
        checks = ChecksForm.of(TestChecks.NONE, units);
    }

    /** Names the instruments of an earlier test again. */
    public final void name(List<InstrumentCopy> copies) {
        for (InstrumentCopy copy : copies) {
            String id = String.valueOf(copy.instrumentId());
            switch (copy.kind()) {
                case GAUGE -> gauge = id;
                case TIMER -> timer = id;
                case THERMOMETER -> thermometer = id;
                case BAROMETER -> barometerUsed = id;
                case OTHER -> {}
            }
        }
    }

    /** What is chosen of a kind. */
    final String instrument(InstrumentKind kind) {
        return switch (kind) {
            case GAUGE -> gauge;
            case TIMER -> timer;
            case THERMOMETER -> thermometer;
            case BAROMETER -> barometerUsed;
            case OTHER -> "";
        };
    }

    private void choose(List<VolumeCopy> volumes) {
        for (VolumeCopy copy : volumes) {
            var chosen = copy.kind() == VolumePart.Kind.RECEIVER ? receivers : pipes;
            chosen.add(String.valueOf(copy.sourceId()));
        }
    }

    /** Adds one more run to fill in, as long as there is room. */
    public final void addRun(UnitSet units) {
        if (runs.size() < MOST_RUNS) {
            runs.add(RunForm.blank(units));
        }
    }

    /**
     * For a preview: leaves out the runs that are not finished, and takes the air as not measured while a run has not
     * settled yet.
     *
     * @return whether it does the latter
     */
    boolean leaveOutUnfinished() {
        runs.removeIf(run -> !run.isTimed());
        boolean unsettled = airTemperature.equals(AirTemperature.SETTLED.name())
                && runs.stream().anyMatch(run -> run.getSettledPressure().isBlank());
        if (unsettled) {
            airTemperature = AirTemperature.NOT_MEASURED.name();
        }
        return unsettled;
    }

    private static String text(@Nullable String typed) {
        return typed == null ? "" : typed;
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(@Nullable String submission) {
        this.submission = text(submission);
    }

    public String getDate() {
        return date;
    }

    public void setDate(@Nullable String date) {
        this.date = text(date);
    }

    public String getTime() {
        return time;
    }

    public void setTime(@Nullable String time) {
        this.time = text(time);
    }

    public String getTester() {
        return tester;
    }

    public void setTester(@Nullable String tester) {
        this.tester = text(tester);
    }

    public String getAirTemperature() {
        return airTemperature;
    }

    public void setAirTemperature(@Nullable String airTemperature) {
        this.airTemperature = text(airTemperature);
    }

    public String getNotes() {
        return notes;
    }

    public void setNotes(@Nullable String notes) {
        this.notes = text(notes);
    }

    public String getConfirmed() {
        return confirmed;
    }

    public void setConfirmed(@Nullable String confirmed) {
        this.confirmed = text(confirmed);
    }

    public String getReason() {
        return reason;
    }

    public void setReason(@Nullable String reason) {
        this.reason = text(reason);
    }

    public String getLockReason() {
        return lockReason;
    }

    public void setLockReason(@Nullable String lockReason) {
        this.lockReason = text(lockReason);
    }

    public EnteredField getBarometer() {
        return barometer;
    }

    public EnteredField getIntakeTemperature() {
        return intakeTemperature;
    }

    public EnteredField getIntakeHumidity() {
        return intakeHumidity;
    }

    public EnteredField getWater() {
        return water;
    }

    public EnteredField getSpeed() {
        return speed;
    }

    public List<String> getReceivers() {
        return receivers;
    }

    public void setReceivers(@Nullable List<String> receivers) {
        this.receivers = receivers == null ? new ArrayList<>() : receivers;
    }

    public List<String> getPipes() {
        return pipes;
    }

    public void setPipes(@Nullable List<String> pipes) {
        this.pipes = pipes == null ? new ArrayList<>() : pipes;
    }

    public List<RunForm> getRuns() {
        return runs;
    }

    public void setRuns(@Nullable List<RunForm> runs) {
        this.runs = runs == null ? new ArrayList<>() : runs;
    }

    /** Not blank when instruments of every site are offered. */
    public String getAnywhere() {
        return anywhere;
    }

    public void setAnywhere(@Nullable String anywhere) {
        this.anywhere = text(anywhere);
    }

    public String getGauge() {
        return gauge;
    }

    public void setGauge(@Nullable String gauge) {
        this.gauge = text(gauge);
    }

    public String getTimer() {
        return timer;
    }

    public void setTimer(@Nullable String timer) {
        this.timer = text(timer);
    }

    public String getThermometer() {
        return thermometer;
    }

    public void setThermometer(@Nullable String thermometer) {
        this.thermometer = text(thermometer);
    }

    public String getBarometerUsed() {
        return barometerUsed;
    }

    public void setBarometerUsed(@Nullable String barometerUsed) {
        this.barometerUsed = text(barometerUsed);
    }

    public String getOverrideReason() {
        return overrideReason;
    }

    public void setOverrideReason(@Nullable String overrideReason) {
        this.overrideReason = text(overrideReason);
    }

    public ChecksForm getChecks() {
        return checks;
    }
}
