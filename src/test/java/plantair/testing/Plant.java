package plantair.testing;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationContext;
import plantair.equipment.Compressor;
import plantair.equipment.CompressorFacts;
import plantair.equipment.CompressorKind;
import plantair.equipment.CompressorPlate;
import plantair.equipment.Compressors;
import plantair.equipment.Control;
import plantair.equipment.Drive;
import plantair.equipment.RatingEntry;
import plantair.equipment.Receiver;
import plantair.equipment.ReceiverFacts;
import plantair.equipment.Receivers;
import plantair.equipment.VolumeKnownBy;
import plantair.instrument.AccuracyGrade;
import plantair.instrument.AsFound;
import plantair.instrument.Calibration;
import plantair.instrument.CalibrationDraft;
import plantair.instrument.Certificate;
import plantair.instrument.Instrument;
import plantair.instrument.InstrumentFacts;
import plantair.instrument.InstrumentKind;
import plantair.instrument.Instruments;
import plantair.instrument.RecordCalibration;
import plantair.maintenance.EventDraft;
import plantair.maintenance.EventKind;
import plantair.maintenance.MaintenanceEvent;
import plantair.maintenance.RecordEvent;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.PumpUpMethods;
import plantair.pumpup.StaticHold;
import plantair.pumpup.VolumePart;
import plantair.quantity.Entered;
import plantair.quantity.FlowBasis;
import plantair.site.Site;
import plantair.site.SiteFacts;
import plantair.site.Sites;
import plantair.testrecord.CorrectionReason;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.RecordTest;
import plantair.testrecord.Restatements;
import plantair.testrecord.RunEntry;
import plantair.testrecord.TestChecks;
import plantair.testrecord.TestConditions;
import plantair.testrecord.TestDraft;
import plantair.testrecord.VolumeCopy;

/** A small plant for tests of the whole application: every part sound unless the test says otherwise. */
public final class Plant {

    private final Sites sites;
    private final Compressors compressors;
    private final Receivers receivers;
    private final RecordTest recordTest;
    private final Instruments instruments;
    private final RecordCalibration recordCalibration;
    private final Restatements restatements;
    private final RecordEvent recordEvent;

    private Plant(ApplicationContext context) {
        sites = context.getBean(Sites.class);
        compressors = context.getBean(Compressors.class);
        receivers = context.getBean(Receivers.class);
        recordTest = context.getBean(RecordTest.class);
        instruments = context.getBean(Instruments.class);
        recordCalibration = context.getBean(RecordCalibration.class);
        restatements = context.getBean(Restatements.class);
        recordEvent = context.getBean(RecordEvent.class);
    }

    public static Plant in(ApplicationContext context) {
        return new Plant(context);
    }

    public Site site() {
        return site("North works", "America/Chicago");
    }

    public Site site(String name, String zone) {
        return sites.saveAndFlush(new Site(new SiteFacts(name, zone, Entered.parse("600 [ft_i]"), null, "")));
    }

    public Compressor compressor(Site site) {
        return compressor(site, "C-1");
    }

    public Compressor compressor(Site site, String tag) {
        return compressor(site, tag, true);
    }

    /** A two-stage piston machine rated 35 cfm of free air at 175 psi. */
    public Compressor compressor(Site site, String tag, boolean inService) {
        var plate = new CompressorPlate(
                tag,
                "Two-stage piston",
                "",
                CompressorKind.PISTON,
                2,
                Drive.BELT,
                Control.START_STOP,
                Entered.parse("10 [HP]"),
                null,
                null,
                3,
                null,
                null,
                "",
                inService);
        return compressors.saveAndFlush(new Compressor(site, new CompressorFacts(plate, List.of(rating()))));
    }

    private static RatingEntry rating() {
        return new RatingEntry(Entered.parse("175 [psi]"), Entered.parse("35 [cft_i]/min"), FlowBasis.INTAKE);
    }

    public Receiver receiver(Site site) {
        return receivers.saveAndFlush(new Receiver(
                site,
                new ReceiverFacts(
                        "R-1",
                        Entered.parse("120 [gal_us]"),
                        VolumeKnownBy.PLATE,
                        Entered.parse("200 [psi]"),
                        Entered.parse("200 [psi]"),
                        null,
                        "",
                        true)));
    }

    /** A gauge of 200 psi, 1 % of span, without a certificate. */
    public Instrument gauge(String tag) {
        return gauge(tag, null, true);
    }

    /** The same, kept at a site or carried between sites. */
    public Instrument gauge(String tag, @Nullable Site keptAt, boolean inService) {
        return instruments.saveAndFlush(new Instrument(new InstrumentFacts(
                tag,
                InstrumentKind.GAUGE,
                keptAt,
                "",
                "",
                Entered.parse("200 [psi]"),
                AccuracyGrade.ASME_1A,
                null,
                null,
                Entered.parse("2 [psi]"),
                12,
                "",
                inService)));
    }

    /** Finds a gauge reading 4 psi high at the stop of a usual run, and restates the tests made with it before. */
    public Calibration restate(Instrument gauge, LocalDate foundOn, String certificateNumber) {
        var certificate = new Certificate(foundOn, foundOn.plusYears(1), certificateNumber, "Own bench", "", true, "");
        var points = List.of(
                new AsFound(Entered.parse("100 [psi]"), Entered.parse("0 [psi]")),
                new AsFound(Entered.parse("175 [psi]"), Entered.parse("4 [psi]")));
        Calibration found =
                recordCalibration.record(new CalibrationDraft(UUID.randomUUID(), gauge, certificate, points), "Ann");
        restatements.sign(found, "found high", "Ann");
        return found;
    }

    /** Records work done on a machine. */
    public MaintenanceEvent event(
            Compressor compressor, LocalDate happenedOn, EventKind kind, boolean mayStep, String note) {
        var draft = new EventDraft(UUID.randomUUID(), compressor.id(), happenedOn, kind, mayStep, "Ann", note);
        return recordEvent.record(draft, "Ann");
    }

    /** Records a test whose runs took these times, in seconds. */
    public PumpUpTest test(Compressor compressor, String performedAt, String... seconds) {
        return plan(compressor).on(performedAt).runs(seconds).record();
    }

    /** A test that can still be changed before it is recorded. */
    public PlannedTest plan(Compressor compressor) {
        return new PlannedTest(compressor);
    }

    /** 140 to 172 psig in a receiver of 120 gallons and 2.1 gallons of pipe, air temperatures read. */
    public final class PlannedTest {

        private final Compressor compressor;
        private Instant performedAt = Instant.parse("2026-01-05T14:00:00Z");
        private String tester = "Ann";
        private String notes = "";
        private String start = "140.0 [psi]";
        private String stop = "172.0 [psi]";
        private @Nullable String air = "95 [degF]";
        private String receiverTag = "R-1";
        private TestChecks checks = TestChecks.NONE;
        private List<InstrumentCopy> named = List.of();
        private @Nullable String overrideReason;
        private List<String> elapsed = List.of("60.2 s", "60.8 s", "60.5 s");

        private PlannedTest(Compressor compressor) {
            this.compressor = compressor;
        }

        public PlannedTest on(String instant) {
            performedAt = Instant.parse(instant);
            return this;
        }

        public PlannedTest by(String who) {
            tester = who;
            return this;
        }

        public PlannedTest notes(String text) {
            notes = text;
            return this;
        }

        /** Elapsed times in seconds, or as m:ss. */
        public PlannedTest runs(String... times) {
            elapsed = Stream.of(times)
                    .map(time -> time + (time.contains(":") ? " m:ss" : " s"))
                    .toList();
            return this;
        }

        /** Pressures as typed, with unit code. */
        public PlannedTest band(String from, String to) {
            start = from;
            stop = to;
            return this;
        }

        public PlannedTest receiverTag(String tag) {
            receiverTag = tag;
            return this;
        }

        public PlannedTest checks(TestChecks made) {
            checks = made;
            return this;
        }

        /** Names instruments, past their date for a reason. */
        public PlannedTest with(List<InstrumentCopy> instruments, @Nullable String reason) {
            named = instruments;
            overrideReason = reason;
            return this;
        }

        /** Names a gauge that has no certificate. */
        public PlannedTest with(Instrument gauge) {
            return with(List.of(InstrumentCopy.of(gauge, null, LocalDate.EPOCH)), null);
        }

        /** Says that another machine was on the receiver. */
        public PlannedTest anotherMachineOn() {
            return checks(new TestChecks(
                    null, null, null, null, false, null, null, null, null, null, null, null, null, null, null));
        }

        /** Holds the pressure for five minutes before the runs; a fall leaves the test volume. */
        public PlannedTest held(String from, String to) {
            return checks(new TestChecks(
                    Entered.parse(from),
                    Entered.parse(to),
                    Entered.parse("5:00 m:ss"),
                    StaticHold.Place.TEST_VOLUME,
                    true,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null));
        }

        public PlannedTest airNotMeasured() {
            air = null;
            return this;
        }

        public PumpUpTest record() {
            return recordTest.record(draft(), tester);
        }

        public PumpUpTest supersede(PumpUpTest old, String reason) {
            return recordTest.supersede(old, draft(), CorrectionReason.of(reason), tester);
        }

        public TestDraft draft() {
            return new TestDraft(
                    UUID.randomUUID(),
                    compressor,
                    performedAt,
                    compressor.site().facts().zone(),
                    tester,
                    conditions(),
                    volumes(),
                    List.of(rating()),
                    elapsed.stream().map(this::run).toList(),
                    notes,
                    "",
                    PumpUpMethods.current().version(),
                    checks,
                    named,
                    overrideReason);
        }

        private RunEntry run(String time) {
            return new RunEntry(
                    Entered.parse(start), Entered.parse(stop), Entered.parse(time), air(), air(), null, null, null);
        }

        private @Nullable Entered air() {
            return air == null ? null : Entered.parse(air);
        }

        private TestConditions conditions() {
            return new TestConditions(
                    compressor.site().facts().elevation(),
                    null,
                    Entered.parse("14.5 [psi]"),
                    Entered.parse("75.0 [degF]"),
                    Entered.parse("0 %"),
                    air == null ? AirTemperature.NOT_MEASURED : AirTemperature.MEASURED,
                    null,
                    null,
                    null);
        }

        private List<VolumeCopy> volumes() {
            return List.of(
                    copy(VolumePart.Kind.RECEIVER, receiverTag, "120 [gal_us]", "200 [psi]"),
                    copy(VolumePart.Kind.PIPE, "P-1", "2.1 [gal_us]", null));
        }

        private static VolumeCopy copy(VolumePart.Kind kind, String label, String volume, @Nullable String mawp) {
            return new VolumeCopy(
                    kind, 1, label, Entered.parse(volume), null, null, mawp == null ? null : Entered.parse(mawp));
        }
    }
}
