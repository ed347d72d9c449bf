package plantair.transfer;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Compressors;
import plantair.equipment.PipePieces;
import plantair.equipment.Receivers;
import plantair.instrument.Calibrations;
import plantair.instrument.Instruments;
import plantair.pumpup.UnlikelyReading;
import plantair.testrecord.FigureText;
import plantair.testrecord.ImportTests;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.TestDraft;
import plantair.testrecord.UnlikelyReadings;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** A log of tests as CSV: looked through first, then taken in as a whole. */
@Service
class TestLog {

    private static final int BATCH = 100;

    private final Compressors compressors;
    private final Receivers receivers;
    private final PipePieces pipes;
    private final Instruments instruments;
    private final Calibrations calibrations;
    private final PumpUpTests tests;
    private final UnlikelyReadings unlikely;
    private final ImportTests importing;
    private final Clock clock;

    TestLog(
            Compressors compressors,
            Receivers receivers,
            PipePieces pipes,
            Instruments instruments,
            Calibrations calibrations,
            PumpUpTests tests,
            UnlikelyReadings unlikely,
            ImportTests importing,
            Clock clock) {
        this.compressors = compressors;
        this.receivers = receivers;
        this.pipes = pipes;
        this.instruments = instruments;
        this.calibrations = calibrations;
        this.tests = tests;
        this.unlikely = unlikely;
        this.importing = importing;
        this.clock = clock;
    }

    /** Looks through a log and writes nothing. */
    @Transactional(readOnly = true)
    public Findings check(Path file, String name, LongConsumer progress) {
        var findings = new Findings();
        Map<UUID, Long> submissions = new HashMap<>();
        Map<String, LoggedTest> labels = new HashMap<>();
        Set<String> corrected = new HashSet<>();
        walk(file, name, findings, test -> {
            Long twin = submissions.putIfAbsent(test.draft().submission(), test.line());
            if (twin != null) {
                findings.problems().add(name, test.line(), "", "import.twin", twin);
            }
            if (!test.corrects().isEmpty()
                    && (!labels.containsKey(test.corrects()) || !corrected.add(test.corrects()))) {
                findings.problems().add(name, test.line(), "supersedes", "import.supersedes", test.corrects());
            }
            labels.put(test.label(), test);
            checkOne(name, test, Optional.ofNullable(labels.get(test.corrects())), findings);
            if (submissions.size() % BATCH == 0) {
                importing.forget();
                progress.accept(submissions.size());
            }
        });
        if (findings.problems().isEmpty() && findings.tests() + findings.known() == 0) {
            findings.problems().add(name, 0, "", "import.nothing");
        }
        return findings;
    }

    private void checkOne(String name, LoggedTest test, Optional<LoggedTest> old, Findings findings) {
        TestDraft draft = test.draft();
        if (tests.findBySubmission(draft.submission()).isPresent()) {
            findings.addKnown();
            return;
        }
        boolean taken = old.flatMap(
                        first -> tests.findBySubmission(first.draft().submission()))
                .flatMap(recorded -> tests.findBySupersedesId(recorded.id()))
                .isPresent();
        if (taken) {
            findings.problems().add(name, test.line(), "supersedes", "import.supersedes", test.corrects());
        } else if (!importing.isPossible(draft)) {
            findings.problems().add(name, test.line(), "", "import.impossible");
        } else {
            findings.addNew(
                    draft.compressor().site().name() + ", " + draft.compressor().tag());
            var text = new FigureText(UnitSet.byName(null), QuantityFormat.of(UnitSet.byName(null)));
            for (UnlikelyReading reading : unlikely.in(draft, Optional.empty())) {
                long line = test.line() + Math.max(0, reading.run() - 1);
                findings.notes()
                        .add(
                                name,
                                line,
                                reading.reading().name().toLowerCase(Locale.ROOT),
                                "unlikely." + reading.code(),
                                text.all(reading.figures()));
            }
        }
    }

    /**
     * Takes in the tests of a log that are new: all of them or none.
     *
     * @param end told how many were new, within the same transaction
     * @return how many were new
     * @throws ChangedMeanwhile when the log, looked through before, is no longer sound
     */
    @Transactional
    public long record(Path file, String name, String by, LongConsumer progress, LongConsumer end) {
        var findings = new Findings();
        Map<String, Long> ids = new HashMap<>();
        Set<Long> machines = new HashSet<>();
        String source = name + ", SHA-256 " + Digest.of(file);
        walk(file, name, findings, test -> {
            Optional<PumpUpTest> known = tests.findBySubmission(test.draft().submission());
            long id = known.map(PumpUpTest::id).orElseGet(() -> {
                findings.addNew(test.draft().compressor().tag());
                return record(test, ids, source, by).id();
            });
            ids.put(test.label(), id);
            machines.add(test.draft().compressor().id());
            if (findings.tests() % BATCH == 0) {
                importing.forget();
                progress.accept(findings.tests());
            }
        });
        if (!findings.problems().isEmpty()) {
            throw new ChangedMeanwhile(findings.problems());
        }
        importing.forget();
        importing.tellFollowers(machines);
        end.accept(findings.tests());
        return findings.tests();
    }

    private PumpUpTest record(LoggedTest test, Map<String, Long> ids, String source, String by) {
        PumpUpTest corrected = test.corrects().isEmpty()
                ? null
                : Optional.ofNullable(ids.get(test.corrects()))
                        .flatMap(tests::findById)
                        .orElseThrow(() -> new ChangedMeanwhile(new Remarks()));
        String codes = unlikely.in(test.draft(), Optional.ofNullable(corrected).map(PumpUpTest::id)).stream()
                .map(reading -> reading.code().name())
                .distinct()
                .collect(Collectors.joining(" "));
        String reason = corrected == null ? "import" : test.reason();
        return importing.record(test.draft().withConfirmed(codes), corrected, reason, source, by);
    }

    private void walk(Path file, String name, Findings findings, Consumer<LoggedTest> tests) {
        Remarks problems = findings.problems();
        var lookup = new RegisterLookup(compressors, receivers, pipes, instruments, calibrations);
        var reader = new TestLogReader(lookup, clock, problems, findings.notes());
        var groups = new LogGroups(
                problems, (label, rows) -> reader.read(label, rows).ifPresent(tests));
        var csv = new CsvRows(name, problems);
        boolean[] told = {false};
        try (InputStream in = Files.newInputStream(file)) {
            csv.read(in, row -> {
                if (!told[0]) {
                    told[0] = true;
                    checkHeader(name, csv.header(), findings);
                }
                if (hasNeeded(csv.header())) {
                    groups.add(row);
                }
            });
            groups.end();
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    private static boolean hasNeeded(List<String> header) {
        return header.containsAll(LogColumns.NEEDED);
    }

    private static void checkHeader(String name, List<String> header, Findings findings) {
        LogColumns.NEEDED.stream()
                .filter(column -> !header.contains(column))
                .forEach(column -> findings.problems().add(name, 1, column, "import.columnMissing", column));
        List<String> unread = header.stream()
                .filter(column -> !column.isEmpty() && !LogColumns.isRead(column))
                .toList();
        if (!unread.isEmpty()) {
            findings.notes().add(name, 1, "", "import.unread", unread.size(), String.join(" ", unread));
        }
    }
}
