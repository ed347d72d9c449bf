package plantair.demo;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import plantair.demo.ChangeBook.Change;
import plantair.instrument.AccuracyGrade;
import plantair.instrument.AsFound;
import plantair.instrument.Certificate;
import plantair.instrument.InstrumentFacts;
import plantair.instrument.InstrumentKind;
import plantair.quantity.Entered;
import plantair.quantity.PressureUnit;
import plantair.quantity.Rounded;
import plantair.register.ChangeKind;
import plantair.site.Site;

/** The pressure gauges of the quay and their certificates; what was found is the truth about {@link Machines}. */
final class Gauges {

    private static final Instant OPENED = Instant.parse("2020-01-13T17:40:00Z");
    private static final Instant CHANGED = Instant.parse("2023-03-14T21:15:00Z");
    private static final Site QUAY = new Site(Registers.SITES.get(0));
    private static final String OLD_NOTE =
            "On C-03 until 14 March 2023. Read 5 % too much; kept in the drawer as a warning.";

    private static final String CRACKED = "On C-04 until 20 September 2023, when its glass broke.";
    private static final Instant BROKEN = Instant.parse("2023-09-20T18:05:00Z");

    static final InstrumentFacts PG_01 = gauge("PG-01", AccuracyGrade.ASME_A, "2 [psi]", "On C-01.", true);
    static final InstrumentFacts PG_02 = gauge("PG-02", AccuracyGrade.ASME_1A, "1 [psi]", "On C-02.", true);
    static final InstrumentFacts PG_03 = gauge("PG-03", AccuracyGrade.ASME_B, "2 [psi]", OLD_NOTE, false);
    static final InstrumentFacts PG_04 =
            gauge("PG-04", AccuracyGrade.ASME_1A, "2 [psi]", "On C-03 since 14 March 2023.", true);

    static final InstrumentFacts PG_05 = gauge("PG-05", AccuracyGrade.ASME_1A, "1 [psi]", CRACKED, false);
    static final InstrumentFacts PG_06 =
            gauge("PG-06", AccuracyGrade.ASME_1A, "1 [psi]", "On C-04 since 20 September 2023.", true);

    static final List<InstrumentFacts> ALL = List.of(PG_01, PG_02, PG_03, PG_04, PG_05, PG_06);

    static final List<Calibrated> CALIBRATIONS = List.of(
            calibrated(PG_01, Machines.C01, "2024-10-22", true),
            calibrated(PG_01, Machines.C01, "2025-10-28", true),
            calibrated(PG_02, Machines.C02, "2024-10-22", true),
            calibrated(PG_03, Machines.C03, "2023-03-13", false),
            calibrated(PG_04, Machines.C03, "2025-07-01", true),
            calibrated(PG_05, Machines.C04, "2023-06-20", true),
            calibrated(PG_06, Machines.C04, "2023-09-18", true),
            calibrated(PG_06, Machines.C04, "2024-09-17", true),
            calibrated(PG_06, Machines.C04, "2025-09-16", true));

    private Gauges() {}

    /**
     * A certificate.
     *
     * @param instrument what was calibrated
     * @param submission its key
     * @param certificate what it says
     * @param points what was found
     */
    record Calibrated(InstrumentFacts instrument, UUID submission, Certificate certificate, List<AsFound> points) {}

    /** How often a gauge was changed in the register. */
    static int version(InstrumentFacts facts) {
        return facts == PG_03 || facts == PG_05 ? 1 : 0;
    }

    /** The gauges in the change log. */
    static List<Change> changes() {
        var worn = gauge("PG-03", AccuracyGrade.ASME_B, "2 [psi]", "On C-03.", true);
        var whole = gauge("PG-05", AccuracyGrade.ASME_1A, "1 [psi]", "On C-04.", true);
        return List.of(
                change(OPENED, PG_01, null, "first entry"),
                change(OPENED.plusSeconds(180), PG_02, null, "first entry"),
                change(OPENED.plusSeconds(360), worn, null, "first entry"),
                change(CHANGED, PG_03, worn.lines(), "read 5 % too much, taken off"),
                change(CHANGED.plusSeconds(240), PG_04, null, "new, in place of PG-03"),
                change(OPENED.plusSeconds(540), whole, null, "first entry"),
                change(BROKEN, PG_05, whole.lines(), "glass broken"),
                change(BROKEN.plusSeconds(300), PG_06, null, "in place of PG-05"));
    }

    private static Change change(Instant at, InstrumentFacts now, @Nullable String before, String reason) {
        return new Change(at, ChangeBook.KEEPER, ChangeKind.INSTRUMENT, now.tag(), before, now.lines(), reason);
    }

    private static InstrumentFacts gauge(
            String tag, AccuracyGrade grade, String division, String note, boolean inService) {
        return new InstrumentFacts(
                tag,
                InstrumentKind.GAUGE,
                QUAY,
                "Kestrelin 4 inch",
                "",
                Entered.parse("200 [psi]"),
                grade,
                null,
                null,
                Entered.parse(division),
                12,
                note,
                inService);
    }

    /** At 50, 100 and 150 psi, found as far off as the machine's gauge really was. */
    private static Calibrated calibrated(InstrumentFacts facts, Machine machine, String day, boolean leftInOrder) {
        LocalDate doneOn = LocalDate.parse(day);
        double error = machine.gauge()
                .apply(facts == PG_06 ? Machines.GAUGE_OF_C04 : doneOn)
                .error();
        var certificate = new Certificate(
                doneOn,
                doneOn.plusMonths(12),
                "HB-" + day.substring(0, 7) + "-" + facts.tag().substring(3),
                "Harbour bench, deadweight tester",
                "Weights traced to the national standard, invented as all else here.",
                leftInOrder,
                leftInOrder ? "" : "Not worth a repair.");
        var points = IntStream.of(50, 100, 150)
                .mapToObj(shown -> new AsFound(psi(shown, 0), psi(shown - shown / (1 + error), 1)))
                .toList();
        var key = UUID.nameUUIDFromBytes((facts.tag() + day).getBytes(StandardCharsets.UTF_8));
        return new Calibrated(facts, key, certificate, points);
    }

    private static Entered psi(double value, int places) {
        return new Entered(Rounded.places(value, places), PressureUnit.PSI);
    }
}
