package plantair.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import plantair.demo.Occasion.Trouble;

/** What happened at the machines, and when they were tested. */
final class Stories {

    static final String WATER_FOUND =
            "float drain of R-02 was stuck, 130 US gal came out by the bucket. Same readings, water taken off.";
    static final String WATER_REASON = "water drained";
    static final String OVERDUE_REASON =
            "No spare for this range, and no date at the bench yet. Beside PG-01 it shows the same within a division.";

    private static final LocalDate FIRST_QUARTER = LocalDate.of(2020, 2, 1);
    private static final LocalDate TEN_YEARS_AGO = LocalDate.of(2016, 5, 1);
    private static final LocalDate METER_SINCE = LocalDate.of(2024, 1, 1);
    private static final LocalDate LAPS_SINCE = LocalDate.of(2025, 10, 1);
    private static final LocalDate LAST_QUARTER = LocalDate.of(2026, 5, 1);
    private static final LocalDate HOLDS_SINCE = LocalDate.of(2025, 1, 1);

    /** By machine: tests out of the ordinary, in place of the one of that quarter. */
    private static final Map<String, List<Occasion>> SPECIAL = Map.of(
            "C-01",
            List.of(
                    new Occasion(
                            LocalDate.of(2022, 11, 17),
                            Trouble.NONE,
                            "Slower again. Second-stage valve cover hot, and it knocks. Told Marguerite."),
                    new Occasion(LocalDate.of(2023, 5, 11), Trouble.NONE, "Takes forever now. Valves are on order."),
                    new Occasion(
                            LocalDate.of(2023, 8, 10),
                            Trouble.NONE,
                            "First test since the valve job (8 June): like it was before."),
                    new Occasion(
                            LocalDate.of(2025, 2, 6),
                            Trouble.COLD_START,
                            "Started from cold, no time to warm up. Every run slower than the one before.")),
            "C-02",
            List.of(
                    new Occasion(LocalDate.of(2022, 8, 18), Trouble.WATER, "Better than new?! Read everything twice."),
                    new Occasion(
                            LocalDate.of(2022, 8, 30),
                            Trouble.NONE,
                            "Again after draining R-02. Drain float replaced. This is more like it.")),
            "C-03",
            List.of(
                    new Occasion(
                            LocalDate.of(2021, 5, 20),
                            Trouble.LEAKING_VALVE,
                            "Low. V-3 passes: heard it hiss behind when shut. New seat ordered."),
                    new Occasion(LocalDate.of(2021, 8, 12), Trouble.NONE, "V-3 has its new seat, shuts tight."),
                    new Occasion(
                            LocalDate.of(2023, 5, 16),
                            Trouble.NONE,
                            "New gauge since 14 March. The old one showed 5 psi more than the test gauge at 100.")),
            "C-04",
            List.of(
                    new Occasion(
                            LocalDate.of(2021, 2, 11),
                            Trouble.NONE,
                            "Low again, and one valve cover hotter than the rest."),
                    new Occasion(
                            LocalDate.of(2021, 5, 13),
                            Trouble.NONE,
                            "First test since the valves of 14 April. Better."),
                    new Occasion(LocalDate.of(2023, 11, 9), Trouble.NONE, "With PG-06 now.")),
            "C-11",
            List.of(new Occasion(
                    LocalDate.of(2024, 11, 19), Trouble.HURRY, "Two runs only, the line wanted its air back.")),
            "C-12",
            List.of());

    private Stories() {}

    /** All tests of a machine in order. */
    static List<Occasion> of(String tag) {
        List<Occasion> special = SPECIAL.get(tag);
        Random random = new Random(7L * tag.hashCode());
        List<Occasion> all = new ArrayList<>(special);
        for (LocalDate quarter = firstQuarter(tag); !quarter.isAfter(LAST_QUARTER); quarter = quarter.plusMonths(3)) {
            LocalDate day = workday(quarter.plusDays(2 + random.nextInt(22)));
            boolean taken = special.stream().anyMatch(one -> isSameMonth(one.date(), day));
            boolean nobodyThere = day.getYear() == 2020 && day.getMonthValue() == 5;
            if (!taken && !nobodyThere) {
                all.add(new Occasion(day, Trouble.NONE, ""));
            }
        }
        all.sort(Comparator.comparing(Occasion::date));
        return all;
    }

    /** True when the tank was watched before the runs: since 2025 on C-02, and once where a valve was heard. */
    static boolean hasHold(String tag, Occasion occasion) {
        return occasion.trouble() == Trouble.LEAKING_VALVE
                || tag.equals("C-02") && !occasion.date().isBefore(HOLDS_SINCE);
    }

    private static LocalDate firstQuarter(String tag) {
        return tag.equals("C-04") ? TEN_YEARS_AGO : FIRST_QUARTER;
    }

    /** True when somebody reads a meter on the motor's feed: on the two large machines since 2024. */
    static boolean hasMeter(String tag, Occasion occasion) {
        return (tag.equals("C-02") || tag.equals("C-04")) && !occasion.date().isBefore(METER_SINCE);
    }

    /** True when marks are timed on the way: on C-02 since the autumn of 2025. */
    static boolean hasLaps(String tag, Occasion occasion) {
        return tag.equals("C-02") && !occasion.date().isBefore(LAPS_SINCE);
    }

    private static LocalDate workday(LocalDate day) {
        DayOfWeek week = day.getDayOfWeek();
        return week == DayOfWeek.SATURDAY ? day.minusDays(1) : week == DayOfWeek.SUNDAY ? day.plusDays(1) : day;
    }

    private static boolean isSameMonth(LocalDate a, LocalDate b) {
        return a.getYear() == b.getYear() && a.getMonth() == b.getMonth();
    }
}
