package plantair.transfer;

import java.nio.file.Path;
import java.time.Clock;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.function.BiConsumer;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.TransactionStatus;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.export.CellKind;
import plantair.export.DataFile;
import plantair.export.DataFiles;
import plantair.register.ChainIntake;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.register.ImportedRecords;
import plantair.site.Sites;
import plantair.testrecord.ImportTests;

/**
 * The zip of everything, taken in by an installation without records: every record with its number, its times and its
 * signatures. Looking through it does all of that too, and takes it back.
 */
@Service
class WholePlant {

    /** What an installation may hold before: lines about it itself. */
    private static final String CHANGES = "change_record";

    private final JdbcTemplate jdbc;
    private final TransactionTemplate transaction;
    private final ImportTests importing;
    private final Sites sites;
    private final Changes changes;
    private final ChainIntake chain;
    private final AttachedBytes bytes;
    private final List<ImportedRecords> imported;
    private final Clock clock;
    private final long mostBytes;

    WholePlant(
            JdbcTemplate jdbc,
            TransactionTemplate transaction,
            ImportTests importing,
            Sites sites,
            Changes changes,
            ChainIntake chain,
            AttachedBytes bytes,
            List<ImportedRecords> imported,
            Clock clock,
            @Value("${plantair.import.most-unpacked-megabytes:2000}") long mostMegabytes) {
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.importing = importing;
        this.sites = sites;
        this.changes = changes;
        this.chain = chain;
        this.bytes = bytes;
        this.imported = imported;
        this.clock = clock;
        this.mostBytes = mostMegabytes * 1_000_000;
    }

    /** Looks through a zip and leaves nothing behind. */
    Findings check(Path zip, String name, LongConsumer progress) {
        var findings = new Findings();
        try (UnpackedZip files = UnpackedZip.of(zip, name, mostBytes, findings.problems())) {
            if (findings.problems().isEmpty() && isEmpty(name, findings) && readsWell(files, findings)) {
                transaction.executeWithoutResult(status -> {
                    fill(files, findings, progress, status);
                    findings.machines().addAll(machines());
                    status.setRollbackOnly();
                });
            }
        } catch (TableInserts.RefusedRows refused) {
            refused.tell(findings.problems());
        }
        return findings;
    }

    /**
     * Takes in a zip: all of it or nothing.
     *
     * @param end told how many tests there were, within the transaction that takes them in
     * @return how many tests there were
     * @throws ChangedMeanwhile when the zip, looked through before, is no longer sound
     */
    long record(Path zip, String name, String by, LongConsumer progress, LongConsumer end) {
        var findings = new Findings();
        try (UnpackedZip files = UnpackedZip.of(zip, name, mostBytes, findings.problems())) {
            if (findings.problems().isEmpty() && isEmpty(name, findings)) {
                moveNumbers(files, findings);
                transaction.executeWithoutResult(status -> {
                    fill(files, findings, progress, status);
                    String source = name + ", SHA-256 " + Digest.of(zip);
                    chain.takeIn(EnumSet.complementOf(EnumSet.of(ChangeKind.ACCOUNT)), by, "imported from " + source);
                    note(source, by);
                    end.accept(findings.tests());
                });
            }
        } catch (TableInserts.RefusedRows refused) {
            refused.tell(findings.problems());
        }
        if (!findings.problems().isEmpty()) {
            throw new ChangedMeanwhile(findings.problems());
        }
        return findings.tests();
    }

    private boolean isEmpty(String name, Findings findings) {
        boolean empty = DataFiles.TABLES.stream()
                .map(DataFile::table)
                .filter(table -> !table.equals(CHANGES))
                .allMatch(table -> jdbc.queryForList("select 1 from " + table + " fetch first 1 rows only")
                        .isEmpty());
        if (!empty) {
            findings.problems().add(name, 0, "", "import.notEmpty");
        }
        return empty;
    }

    /** Every cell of every file, before the database sees any. */
    private static boolean readsWell(UnpackedZip files, Findings findings) {
        for (DataFile file : DataFiles.TABLES) {
            read(file, files, findings, (line, values) -> {});
        }
        return findings.problems().isEmpty();
    }

    private static void read(
            DataFile file, UnpackedZip files, Findings findings, BiConsumer<Long, List<@Nullable Object>> rows) {
        boolean tests = file.table().equals("pump_up_test");
        new TableRows(file, tests, findings.problems())
                .read(files.file(file.name()).orElseThrow(), rows);
    }

    private void fill(UnpackedZip files, Findings findings, LongConsumer progress, TransactionStatus status) {
        for (DataFile file : DataFiles.TABLES) {
            var inserts = new TableInserts(jdbc, file);
            read(file, files, findings, (line, values) -> {
                if (!isOfAccount(file, values) && bytes.take(file, values, files, findings.problems())) {
                    inserts.add(line, values);
                }
            });
            inserts.send();
        }
        importing
                .computeResults(progress)
                .ifPresent(test -> findings.problems().add("tests.csv", 0, "", "import.impossibleTest", test));
        imported.stream()
                .flatMap(records -> records.impossible().stream())
                .forEach(one -> findings.problems().add(one.file(), 0, "", "import.impossibleRecord", one.id()));
        findings.addTests(Objects.requireNonNull(jdbc.queryForObject("select count(*) from pump_up_test", Long.class)));
        if (!findings.problems().isEmpty()) {
            status.setRollbackOnly();
        }
    }

    /** Accounts stay where they are; a line about one would tell of somebody else here. */
    private static boolean isOfAccount(DataFile file, List<@Nullable Object> values) {
        return file.table().equals(CHANGES) && values.contains(ChangeKind.ACCOUNT.name());
    }

    private List<String> machines() {
        return jdbc.queryForList(
                "select s.name || ', ' || c.tag from compressor c join site s on s.id = c.site_id order by 1",
                String.class);
    }

    /** New records go on after the numbers in the file. H2 ends the transaction at such a statement, so it comes before. */
    private void moveNumbers(UnpackedZip files, Findings findings) {
        for (DataFile file : DataFiles.TABLES) {
            boolean numbered = file.columns().stream()
                    .anyMatch(column -> column.column().equals("id") && column.kind() == CellKind.ID);
            if (numbered) {
                long[] highest = {0};
                read(
                        file,
                        files,
                        findings,
                        (line, values) ->
                                highest[0] = Math.max(highest[0], (Long) Objects.requireNonNull(values.get(0))));
                jdbc.execute("alter table " + file.table() + " alter column id restart with " + (highest[0] + 1));
            }
        }
    }

    private void note(String source, String by) {
        sites.findAllByOrderByFactsName()
                .forEach(site -> changes.save(new ChangeRecord(
                        clock.instant(),
                        by,
                        ChangeKind.SITE,
                        site.id(),
                        site.name(),
                        null,
                        "imported with all its records from " + source,
                        "import")));
    }
}
