package plantair.history;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.maintenance.MaintenanceEvents;
import plantair.pumpup.PumpUpResult;
import plantair.testrecord.ChooseBaseline;
import plantair.testrecord.Histories;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultLine;
import plantair.testrecord.ResultProjection;
import plantair.testrecord.StoredResults;
import plantair.trend.Limits;
import plantair.web.NoSuchRecord;

/** Machines with their histories, from the registers, the tests and the projection of their results. */
@Service
@Transactional(readOnly = true)
public class Machines {

    /** Keeps the number of rows before a page an int, as the database wants it. */
    private static final int MOST_PAGES = 1_000_000;

    private final Compressors compressors;
    private final PumpUpTests tests;
    private final StoredResults results;
    private final Histories histories;
    private final ResultProjection projection;
    private final MaintenanceEvents events;
    private final ChooseBaseline baselines;

    Machines(
            Compressors compressors,
            PumpUpTests tests,
            StoredResults results,
            Histories histories,
            ResultProjection projection,
            MaintenanceEvents events,
            ChooseBaseline baselines) {
        this.compressors = compressors;
        this.tests = tests;
        this.results = results;
        this.histories = histories;
        this.projection = projection;
        this.events = events;
        this.baselines = baselines;
    }

    /**
     * One page of the machines, worst first; retired ones after those in service. To know the worst, the key figures of
     * all machines are read, in one query of a few numbers a test: good for some thousands of machines.
     *
     * @param siteId machines of this site only; 0 for all
     * @param withRetired whether retired machines are shown
     * @param page from 1; any other than those that exist is empty or the first
     */
    public MachinePage page(long siteId, boolean withRetired, int page, int size) {
        List<Machine> all = worstFirst(siteId, withRetired);
        List<Machine> shown =
                all.stream().skip((long) size * index(page)).limit(size).toList();
        List<ResultLine> last = shown.stream()
                .flatMap(machine -> machine.history().last().stream())
                .toList();
        shown.forEach(Machine::facts); // reads the ratings of those shown while the transaction is open
        return new MachinePage(shown, resultsOf(last), all.size());
    }

    private List<Machine> worstFirst(long siteId, boolean withRetired) {
        Map<Long, List<ResultLine>> lines =
                results.currentLinesOfSite(siteId).stream().collect(Collectors.groupingBy(ResultLine::compressorId));
        return compressors.findAllByOrderByPlateInServiceDescSiteFactsNameAscPlateTagAsc().stream()
                .filter(compressor -> siteId == 0 || compressor.site().id() == siteId)
                .filter(compressor -> withRetired || compressor.isInService())
                .map(compressor -> machine(compressor, lines.getOrDefault(compressor.id(), List.of())))
                .sorted(Machine.WORST_FIRST)
                .toList();
    }

    /**
     * Everything about one machine.
     *
     * @param page of its records, from 1; any other than those that exist is empty or the first
     * @throws NoSuchRecord when there is none of that id
     */
    public MachineFile file(long compressorId, int page, int size) {
        Compressor compressor = compressors
                .findWithSiteById(compressorId)
                .orElseThrow(() -> new NoSuchRecord("compressor " + compressorId));
        Machine machine = new Machine(compressor, histories.of(compressorId));
        machine.facts(); // reads the ratings while the transaction is open
        Page<PumpUpTest> records =
                tests.findByCompressorIdOrderByPerformedAtDescIdDesc(compressorId, PageRequest.of(index(page), size));
        Map<Long, PumpUpTest> corrections =
                tests.findBySupersedesIdIn(records.map(PumpUpTest::id).getContent()).stream()
                        .collect(Collectors.toMap(PumpUpTest::supersedesId, Function.identity()));
        return new MachineFile(
                machine,
                resultsOf(machine.history().tests()),
                records,
                corrections,
                events.findCurrent(compressorId),
                baselines.of(compressorId),
                limits(compressor.site().id()));
    }

    /** Parts of the baseline at which a site wants to act. */
    public Limits limits(long siteId) {
        return Limits.DEFAULT;
    }

    private static int index(int page) {
        return Math.min(Math.max(page, 1), MOST_PAGES) - 1;
    }

    private static Machine machine(Compressor compressor, List<ResultLine> lines) {
        return new Machine(compressor, new MachineHistory(lines, List.of(), List.of()));
    }

    private Map<Long, PumpUpResult> resultsOf(Collection<ResultLine> lines) {
        return lines.isEmpty()
                ? Map.of()
                : projection.results(lines.stream().map(ResultLine::testId).toList());
    }
}
