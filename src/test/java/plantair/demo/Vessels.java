package plantair.demo;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import plantair.due.DueKind;
import plantair.vessel.InspectionKind;
import plantair.vessel.TestMethod;
import plantair.vessel.WallPart;

/** Safety records of the receivers of the demo plant, and the intervals of its sites. All of it is invented. */
final class Vessels {

    static final List<Valve> VALVES = List.of(
            new Valve("R-01", "RV-01", "180 [psi]", "210 [cft_i]/min", LocalDate.of(2019, 4, 2)),
            new Valve("R-02", "RV-02", "150 [psi]", "330 [cft_i]/min", LocalDate.of(2018, 9, 20)),
            new Valve("R-03", "RV-03", "140 [psi]", "180 [cft_i]/min", LocalDate.of(2017, 6, 1)),
            new Valve("R-04", "RV-04", "150 [psi]", "330 [cft_i]/min", LocalDate.of(2018, 9, 20)),
            new Valve("R-05", "RV-05", "185 [psi]", "230 [cft_i]/min", LocalDate.of(2016, 11, 8)),
            new Valve("R-11", "RV-11", "165 [psi]", null, LocalDate.of(2024, 3, 21)),
            new Valve("R-12", "RV-12", "10 bar", "2.4 m3/min", LocalDate.of(2021, 2, 10)));

    static final List<Test> TESTS = List.of(
            new Test("RV-01", LocalDate.of(2022, 5, 11), TestMethod.LIFT, null, true, ""),
            new Test("RV-01", LocalDate.of(2025, 5, 14), TestMethod.BENCH, "179 [psi]", true, ""),
            new Test("RV-02", LocalDate.of(2022, 5, 11), TestMethod.BENCH, "168 [psi]", false, "Opened too high."),
            new Test(
                    "RV-02",
                    LocalDate.of(2022, 5, 18),
                    TestMethod.REPLACED,
                    "151 [psi]",
                    true,
                    "Overhauled one fitted."),
            new Test("RV-02", LocalDate.of(2025, 5, 14), TestMethod.BENCH, "151 [psi]", true, ""),
            new Test("RV-03", LocalDate.of(2025, 5, 14), TestMethod.LIFT, null, true, ""),
            new Test("RV-04", LocalDate.of(2025, 5, 14), TestMethod.BENCH, "149 [psi]", true, ""),
            new Test("RV-05", LocalDate.of(2024, 11, 6), TestMethod.BENCH, "184 [psi]", true, ""),
            new Test("RV-12", LocalDate.of(2025, 2, 12), TestMethod.LIFT, null, true, ""));

    static final List<Paper> PAPERS = List.of(
            new Paper("R-01", "GP-1101", LocalDate.of(2025, 3, 31), "200 [psi]", LocalDate.of(2030, 3, 31)),
            new Paper("R-02", "GP-1102", LocalDate.of(2025, 3, 31), "165 [psi]", LocalDate.of(2030, 3, 31)),
            new Paper("R-03", "GP-0873", LocalDate.of(2020, 11, 30), "150 [psi]", LocalDate.of(2025, 11, 30)),
            new Paper("R-04", "GP-1177", LocalDate.of(2026, 4, 2), "165 [psi]", LocalDate.of(2031, 6, 30)),
            new Paper("R-05", "GP-1178", LocalDate.of(2026, 4, 2), "200 [psi]", LocalDate.of(2031, 6, 30)),
            new Paper("R-11", "JM-0031", LocalDate.of(2025, 9, 30), null, LocalDate.of(2030, 9, 30)),
            new Paper("R-12", "JM-0032", LocalDate.of(2026, 1, 31), "11 bar", LocalDate.of(2031, 1, 31)));

    /** The bottom of the wet tank thins; one head reads thicker than before, which no head does. */
    static final List<Look> LOOKS = List.of(
            new Look(
                    "R-02",
                    InspectionKind.THICKNESS,
                    LocalDate.of(2020, 5, 12),
                    null,
                    "Wall as new but for the bottom.",
                    wall("0.249", "0.250", "0.241", "0.243", "0.262", "0.263", "0.262", "0.261")),
            new Look(
                    "R-02",
                    InspectionKind.THICKNESS,
                    LocalDate.of(2024, 5, 14),
                    null,
                    "Bottom thins where the water stands. Drain it every shift.",
                    wall("0.249", "0.249", "0.231", "0.238", "0.262", "0.262", "0.270", "0.261")),
            new Look(
                    "R-01",
                    InspectionKind.INTERNAL,
                    LocalDate.of(2025, 3, 27),
                    LocalDate.of(2030, 3, 27),
                    "Clean inside, light rust at the drain.",
                    List.of()),
            new Look("R-12", InspectionKind.EXTERNAL, LocalDate.of(2026, 1, 29), null, "No findings.", List.of()));

    static final List<Interval> INTERVALS = List.of(
            new Interval(Registers.GULL, DueKind.TEST, 3, "Maintenance plan of the cannery, page 4"),
            new Interval(
                    Registers.GULL, DueKind.VALVE_TEST, 36, "Letter of the insurer of July 2019, invented as all here"),
            new Interval(Registers.GULL, DueKind.THICKNESS, 48, "Inspector’s advice of 2020, for the wet tank first"),
            new Interval(Registers.MESA, DueKind.EXTERNAL, 12, "Own rule of the packing hall"));

    private Vessels() {}

    /** A relief valve. */
    record Valve(
            String receiver,
            String tag,
            String set,
            @Nullable String capacity,
            LocalDate installed) {}

    /** A test of a relief valve. */
    record Test(
            String valve,
            LocalDate day,
            TestMethod method,
            @Nullable String poppedAt,
            boolean passed,
            String note) {

        UUID submission() {
            return mark(valve + day);
        }
    }

    /** A certificate. */
    record Paper(
            String receiver,
            String number,
            LocalDate issued,
            @Nullable String permitted,
            LocalDate validTo) {}

    /** An inspection. */
    record Look(
            String receiver,
            InspectionKind kind,
            LocalDate day,
            @Nullable LocalDate next,
            String findings,
            List<Wall> wall) {

        UUID submission() {
            return mark(receiver + kind + day);
        }
    }

    /** A reading of the wall. */
    record Wall(String place, WallPart part, String thickness) {}

    /** An interval of a site. */
    record Interval(String site, DueKind kind, int months, String authority) {}

    private static List<Wall> wall(String... inches) {
        List<String> places = List.of(
                "top, inlet end",
                "top, outlet end",
                "bottom, drain end",
                "bottom, middle",
                "inlet head, above",
                "inlet head, below",
                "outlet head, above",
                "outlet head, below");
        return IntStream.range(0, inches.length)
                .mapToObj(i -> new Wall(
                        places.get(i),
                        places.get(i).contains("head") ? WallPart.HEAD : WallPart.SHELL,
                        inches[i] + " [in_i]"))
                .toList();
    }

    private static UUID mark(String what) {
        return UUID.nameUUIDFromBytes(what.getBytes(StandardCharsets.UTF_8));
    }

    /** When somebody wrote down what was done on a day. */
    static Instant evening(LocalDate day) {
        return day.atTime(22, 0).toInstant(ZoneOffset.UTC);
    }
}
