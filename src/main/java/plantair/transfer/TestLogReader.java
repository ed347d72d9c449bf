package plantair.transfer;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.UUID;
import plantair.equipment.Compressor;
import plantair.export.CopyText;
import plantair.export.SafeText;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.PumpUpMethods;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.RunEntry;
import plantair.testrecord.TestChecks;
import plantair.testrecord.TestConditions;
import plantair.testrecord.TestDraft;
import plantair.testrecord.VolumeCopy;

/** Reads the rows of one test of a log: either all is understood and possible, or each cell that is not is told. */
final class TestLogReader {

    private static final int MOST_RUNS = 12;
    private static final LocalTime NOON = LocalTime.NOON;

    private final RegisterLookup registers;
    private final Clock clock;
    private final Remarks problems;
    private final Remarks notes;

    TestLogReader(RegisterLookup registers, Clock clock, Remarks problems, Remarks notes) {
        this.registers = registers;
        this.clock = clock;
        this.problems = problems;
        this.notes = notes;
    }

    /** The test; empty when something was refused. */
    Optional<LoggedTest> read(String label, List<Row> rows) {
        Row first = rows.get(0);
        var cells = new Cells(first);
        var test = new TestCells(cells);
        Optional<Compressor> compressor = registers.compressor(cells);
        Optional<Instant> performedAt = compressor.flatMap(
                machine -> performedAt(first, cells, machine.site().facts().zoneId()));
        Optional<String> tester = cells.text("tester", 120, true);
        Optional<String> note = cells.text("notes", 4000, false);
        Optional<String> override = cells.text("override_reason", 1000, false);
        Optional<String> reason =
                cells.text("reason", 1000, !cells.cell("supersedes").isEmpty());
        Optional<AirTemperature> air = test.air();
        Optional<TestConditions> conditions = test.conditions(air, compressor);
        List<VolumeCopy> volumes =
                compressor.map(machine -> registers.volumes(cells, machine)).orElse(List.of());
        if (conditions.isPresent()
                && !volumes.isEmpty()
                && VolumeCopy.isDrowned(volumes, conditions.get().water())) {
            cells.reject("water", "test.drowned");
        }
        List<InstrumentCopy> instruments = performedAt
                .map(at -> registers.instruments(cells, day(at, compressor.orElseThrow())))
                .orElse(List.of());
        Optional<TestChecks> checks = compressor.map(machine -> test.checks(machine.plate()));
        UUID submission = submission(cells, rows);
        Optional<List<RunEntry>> runs = runs(rows, cells, air);
        cells.tell(problems);
        if (!cells.isSound() || runs.isEmpty()) {
            return Optional.empty();
        }
        Compressor machine = compressor.orElseThrow();
        compareCopies(first, volumes, machine);
        return Optional.of(new LoggedTest(
                label,
                first.line(),
                new TestDraft(
                        submission,
                        machine,
                        performedAt.orElseThrow(),
                        machine.site().facts().zone(),
                        tester.orElseThrow(),
                        conditions.orElseThrow(),
                        volumes,
                        machine.facts().ratings(),
                        runs.get(),
                        note.orElse(""),
                        "",
                        PumpUpMethods.current().version(),
                        checks.orElseThrow(),
                        instruments,
                        override.orElse(null)),
                cells.cell("supersedes"),
                reason.orElse("")));
    }

    private static LocalDate day(Instant at, Compressor compressor) {
        return at.atZone(compressor.site().facts().zoneId()).toLocalDate();
    }

    private Optional<Instant> performedAt(Row row, Cells cells, ZoneId zone) {
        String moment = cells.cell("performed_at");
        Optional<Instant> at = moment.isEmpty() ? ofDateAndTime(row, cells, zone) : ofMoment(moment, cells, zone);
        if (at.isPresent() && at.get().isAfter(clock.instant())) {
            cells.reject(
                    moment.isEmpty() ? "date" : "performed_at",
                    "test.future",
                    at.get().atZone(zone));
            return Optional.empty();
        }
        return at;
    }

    private static Optional<Instant> ofMoment(String moment, Cells cells, ZoneId zone) {
        try {
            boolean local = moment.matches("[\\d-]+[T ][\\d:.]+");
            Instant at = local
                    ? LocalDateTime.parse(moment.replace(' ', 'T')).atZone(zone).toInstant()
                    : OffsetDateTime.parse(moment).toInstant();
            if (at.atZone(zone).getYear() >= 1900) {
                return Optional.of(at);
            }
            cells.reject("performed_at", "date.tooEarly", moment);
        } catch (DateTimeParseException noMoment) {
            cells.reject("performed_at", "import.moment", moment);
        }
        return Optional.empty();
    }

    private Optional<Instant> ofDateAndTime(Row row, Cells cells, ZoneId zone) {
        Optional<LocalDate> date = cells.checks().date("date", cells.cell("date"), true);
        boolean open = cells.cell("time").isEmpty();
        Optional<LocalTime> time = open ? Optional.of(NOON) : cells.checks().time("time", cells.cell("time"), true);
        if (date.isEmpty() || time.isEmpty()) {
            return Optional.empty();
        }
        if (open) {
            notes.add(row.file(), row.line(), "time", "import.noon");
        }
        return Optional.of(date.get().atTime(time.get()).atZone(zone).toInstant());
    }

    private Optional<List<RunEntry>> runs(List<Row> rows, Cells first, Optional<AirTemperature> air) {
        List<RunEntry> runs = new ArrayList<>();
        boolean sound = rows.size() <= MOST_RUNS;
        if (!sound) {
            first.reject("run", "test.tooManyRuns", MOST_RUNS);
        }
        for (Row row : rows) {
            var cells = new Cells(row);
            new RunCells(cells).read(air).ifPresent(runs::add);
            if (row != rows.get(0)) {
                compareWithFirst(row, cells, rows.get(0));
            }
            cells.tell(problems);
            sound &= cells.isSound();
        }
        return sound ? Optional.of(runs) : Optional.empty();
    }

    /** What stands once in a test must not be said twice in two ways. */
    private static void compareWithFirst(Row row, Cells cells, Row first) {
        for (String column : new TreeSet<>(row.cells().keySet())) {
            String cell = row.cell(column);
            if (LogColumns.TEST.contains(column) && !cell.isBlank() && !cell.equals(first.cell(column))) {
                cells.reject(column, "import.differs", cell, first.line());
            }
        }
    }

    /** Registers may have changed since a file was exported; the test takes what they say now. */
    private void compareCopies(Row row, List<VolumeCopy> volumes, Compressor machine) {
        compare(row, "volumes", CopyText.volumes(volumes));
        compare(row, "ratings", CopyText.ratings(machine.facts().ratings()));
        compare(row, "method_version", PumpUpMethods.current().version());
    }

    private void compare(Row row, String column, String now) {
        String then = SafeText.undo(row.cell(column));
        if (!then.isBlank() && !then.equals(now)) {
            notes.add(row.file(), row.line(), column, "import.otherNow", then, now);
        }
    }

    /** The key in the file, else one made of what the rows say, so that the same rows always have the same. */
    private static UUID submission(Cells cells, List<Row> rows) {
        String key = cells.cell("submission");
        if (!key.isEmpty()) {
            if (key.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")) {
                return UUID.fromString(key);
            }
            cells.reject("submission", "import.submission");
        }
        var text = new StringBuilder("test log");
        for (Row row : rows) {
            for (String column : new TreeSet<>(row.cells().keySet())) {
                if (LogColumns.RUN.contains(column) || LogColumns.TEST.contains(column)) {
                    String cell = row.cell(column).strip();
                    text.append(cell.isEmpty() ? "" : "\u001F" + column + "\u001E" + cell);
                }
            }
            text.append("\u001D");
        }
        return UUID.nameUUIDFromBytes(text.toString().getBytes(StandardCharsets.UTF_8));
    }
}
