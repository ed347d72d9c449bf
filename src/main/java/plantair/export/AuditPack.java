package plantair.export;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import plantair.attachment.AttachedFile;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.maintenance.MaintenanceEvent;
import plantair.maintenance.MaintenanceEvents;
import plantair.paper.PaperSize;
import plantair.paper.PdfPrinter;
import plantair.paper.Printout;
import plantair.register.FactLines;
import plantair.testrecord.ChooseBaseline;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.web.NoSuchRecord;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** One machine for an auditor: a report as PDF, and the files behind it, on one view of the database. */
@Service
public class AuditPack {

    /** More do not make a report that somebody reads; the files hold all. */
    static final int MOST_TESTS = 500;

    private final PumpUpTests tests;
    private final Compressors compressors;
    private final MaintenanceEvents events;
    private final ChooseBaseline baselines;
    private final PackLines words;
    private final PdfPrinter printer;
    private final PackPapers papers;
    private final AllFiles files;
    private final TestFile testFile;
    private final TableFile tables;
    private final Clock clock;

    AuditPack(
            PumpUpTests tests,
            Compressors compressors,
            MaintenanceEvents events,
            ChooseBaseline baselines,
            PackLines words,
            PdfPrinter printer,
            PackPapers papers,
            AllFiles files,
            TestFile testFile,
            TableFile tables,
            Clock clock) {
        this.tests = tests;
        this.compressors = compressors;
        this.events = events;
        this.baselines = baselines;
        this.words = words;
        this.printer = printer;
        this.papers = papers;
        this.files = files;
        this.testFile = testFile;
        this.tables = tables;
        this.clock = clock;
    }

    /**
     * Writes the zip.
     *
     * @param filter its machine and period; of the files, only that of tests follows the period
     * @throws NoSuchRecord when there is no such machine
     * @throws IOException when the reader has gone away
     */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public void write(ExportFilter filter, UnitSet units, Locale locale, OutputStream out) throws IOException {
        long id = filter.compressorId();
        Compressor compressor =
                compressors.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("compressor " + id));
        List<AttachedFile> attached = papers.of(id);
        PackReport report =
                report(filter, compressor, QuantityFormat.of(units), locale, papers.lines(attached, locale));
        byte[] document = printer.print(new Printout(
                "export/pack",
                Map.of("report", report),
                List.of("/export/pack.css"),
                PaperSize.of(null, units),
                locale,
                clock.instant()));
        var zip = new ZipOutputStream(out);
        zip.putNextEntry(new ZipEntry("report.pdf"));
        zip.write(document);
        zip.closeEntry();
        files.add(zip, TestFile.NAME, text -> testFile.write(filter, text));
        for (DataFile file : DataFiles.ALL) {
            if (file.ofMachine() != null) {
                files.add(zip, file.name(), text -> tables.writeOfMachine(file, id, text));
            }
        }
        files.add(zip, AllFiles.DICTIONARY, AllFiles::writeDictionary);
        papers.add(id, attached, zip);
        zip.finish();
    }

    private PackReport report(
            ExportFilter filter,
            Compressor compressor,
            QuantityFormat format,
            Locale locale,
            List<PackReport.Paper> attached) {
        List<PumpUpTest> chosen =
                tests.findNext(0, 0, compressor.id(), filter.earliest(), filter.latest(), Limit.of(MOST_TESTS)).stream()
                        .filter(filter::holds)
                        .sorted((a, b) -> a.performedAt().compareTo(b.performedAt()))
                        .toList();
        return new PackReport(
                compressor.tag(),
                compressor.site().name(),
                String.valueOf(filter.from() == null ? "" : filter.from()),
                String.valueOf(filter.to() == null ? "" : filter.to()),
                DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                        clock.instant().truncatedTo(ChronoUnit.SECONDS).atOffset(ZoneOffset.UTC)),
                FactLines.split(compressor.facts().lines()),
                volumes(chosen),
                chosen.stream().map(PumpUpTest::methodVersion).distinct().collect(Collectors.joining(", ")),
                words.baseline(compressor.id()),
                words.of(chosen, compressor.id(), format, locale),
                events(filter, compressor.id()),
                baselines.of(compressor.id()).stream()
                        .map(choice -> choice.chosenAt().truncatedTo(ChronoUnit.SECONDS) + ", " + choice.chosenBy()
                                + ": test " + choice.testId() + ", " + choice.reason())
                        .toList(),
                attached);
    }

    private static List<String> volumes(List<PumpUpTest> chosen) {
        Set<String> used = new LinkedHashSet<>();
        chosen.forEach(test -> test.volumes()
                .forEach(copy -> used.add(
                        CopyText.volumes(List.of(copy)) + (copy.knownBy() == null ? "" : ", " + copy.knownBy()))));
        return List.copyOf(used);
    }

    private List<PackReport.Event> events(ExportFilter filter, long compressorId) {
        List<MaintenanceEvent> all = new ArrayList<>(
                events.findByCompressorIdOrderByHappenedOnDescIdDesc(compressorId, PageRequest.of(0, MOST_TESTS))
                        .getContent());
        Collections.reverse(all);
        Map<Long, MaintenanceEvent> later = all.stream()
                .filter(event -> event.supersedesId() != null)
                .collect(Collectors.toMap(MaintenanceEvent::supersedesId, Function.identity(), (a, b) -> b));
        return all.stream()
                .filter(event -> filter.holds(event.happenedOn()))
                .map(event -> new PackReport.Event(
                        event.happenedOn().toString(),
                        event.kind().name(),
                        event.doneBy(),
                        event.note(),
                        standing(event, later.get(event.id()))))
                .toList();
    }

    private static String standing(MaintenanceEvent event, @Nullable MaintenanceEvent later) {
        String own = event.isWithdrawn() ? "withdraws entry " + event.supersedesId() + ": " + event.reason() : "";
        return later == null ? own : own + (own.isEmpty() ? "" : "; ") + "superseded by entry " + later.id();
    }
}
