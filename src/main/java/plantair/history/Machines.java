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
import plantair.pumpup.Severity;
import plantair.testrecord.ChooseBaseline;
import plantair.testrecord.Histories;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultLine;
import plantair.testrecord.ResultProjection;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;

/** Machines with their histories, from the registers, the tests and the projection of their results. */
@Service
@Transactional(readOnly = true)
public class Machines {

    private final Compressors compressors;
    private final PumpUpTests tests;
    private final Histories histories;
    private final ResultProjection projection;
    private final MaintenanceEvents events;
    private final ChooseBaseline baselines;
    private final SiteLimits siteLimits;

    Machines(
            Compressors compressors,
            PumpUpTests tests,
            Histories histories,
            ResultProjection projection,
            MaintenanceEvents events,
            ChooseBaseline baselines,
            SiteLimits siteLimits) {
        this.compressors = compressors;
        this.tests = tests;
        this.histories = histories;
        this.projection = projection;
        this.events = events;
        this.baselines = baselines;
        this.siteLimits = siteLimits;
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
        Page<PumpUpTest> records = tests.findByCompressorIdOrderByPerformedAtDescIdDesc(
                compressorId, PageRequest.of(Paging.index(page), size));
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
                siteLimits.of(compressor.site()).limits());
    }

    /** Of a test that joins the trend and has nothing but notes, its line tells all. */
    private Map<Long, PumpUpResult> resultsOf(Collection<ResultLine> lines) {
        List<Long> told = lines.stream()
                .filter(line -> !line.joinsTrend() || line.severity() != null && line.severity() != Severity.NOTE)
                .map(ResultLine::testId)
                .toList();
        return told.isEmpty() ? Map.of() : projection.results(told);
    }
}
