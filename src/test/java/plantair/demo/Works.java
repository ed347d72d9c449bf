package plantair.demo;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import plantair.maintenance.EventKind;

/** What was done to the machines, and which baseline was chosen after it. */
final class Works {

    private static final String FITTER = "Harbour Compressor Fitters";
    private static final Work NEW_GAUGE = work(
            "C-03", "2023-03-14", EventKind.GAUGE_CHANGE, ChangeBook.KEEPER, "PG-04 in place of PG-03, 5 % too high.");

    static final List<Work> ALL = List.of(
            work("C-04", "2018-10-03", EventKind.FILTER, "Tomás Iriarte", "Intake filter, black on the quay side."),
            work(
                    "C-04",
                    "2021-04-14",
                    EventKind.VALVES,
                    FITTER,
                    "First-stage inlet valves lapped, two discs and all gaskets new."),
            work("C-03", "2021-07-01", EventKind.OTHER, FITTER, "V-3 behind R-03 has a new seat."),
            work(
                    "C-02",
                    "2022-08-23",
                    EventKind.DRAIN,
                    "Zdeňka Horáková",
                    "130 US gal out of R-02. Float of the drain was stuck, replaced."),
            NEW_GAUGE,
            work("C-01", "2023-06-08", EventKind.VALVES, FITTER, "Second-stage valves and gaskets new."),
            work(
                    "C-04",
                    "2023-09-20",
                    EventKind.GAUGE_CHANGE,
                    ChangeBook.KEEPER,
                    "PG-06 in place of PG-05, glass broken. Side by side within 1 psi; the baseline of 2016 is kept."),
            work("C-02", "2024-03-06", EventKind.FILTER, "Nguyễn Văn Phúc", "Intake filter at the yearly service."));

    static final Baseline BASELINE = new Baseline(
            "C-03",
            LocalDate.of(2023, 5, 16),
            NEW_GAUGE,
            Instant.parse("2023-05-17T16:40:00Z"),
            "First test with a gauge that can be believed.");

    private Works() {}

    /**
     * Work on a machine.
     *
     * @param submission its key
     * @param tag of the machine
     * @param day when
     * @param kind what
     * @param by who did it
     * @param note what exactly
     * @param recordedAt when it was written down
     */
    record Work(
            UUID submission, String tag, LocalDate day, EventKind kind, String by, String note, Instant recordedAt) {}

    /**
     * A baseline that was chosen.
     *
     * @param tag of the machine
     * @param testedOn day of the test
     * @param work behind it
     * @param chosenAt when
     * @param reason why
     */
    record Baseline(String tag, LocalDate testedOn, Work work, Instant chosenAt, String reason) {}

    private static Work work(String tag, String day, EventKind kind, String by, String note) {
        var key = UUID.nameUUIDFromBytes(("work, " + tag + day).getBytes(StandardCharsets.UTF_8));
        Instant evening = Instant.parse(day + "T22:30:00Z");
        Instant opened = Instant.parse("2020-01-15T17:00:00Z");
        return new Work(key, tag, LocalDate.parse(day), kind, by, note, evening.isBefore(opened) ? opened : evening);
    }
}
