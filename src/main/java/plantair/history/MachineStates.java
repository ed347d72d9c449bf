package plantair.history;

import java.util.List;
import java.util.Map;
import java.util.function.LongConsumer;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.equipment.Compressor;
import plantair.equipment.CompressorFollower;
import plantair.equipment.Compressors;
import plantair.pumpup.PumpUpResult;
import plantair.testrecord.Histories;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultLine;
import plantair.testrecord.ResultProjection;
import plantair.trend.Limits;
import tools.jackson.databind.json.JsonMapper;

/**
 * Keeps what the overview says of each machine beside it, so that the overview need not read every test. Nothing in it is a
 * source of truth: {@link #rebuild} makes it anew, to the same digits.
 */
@Service
public class MachineStates implements CompressorFollower {

    private static final int BATCH = 200;

    private final StoredStates states;
    private final Compressors compressors;
    private final Histories histories;
    private final PumpUpTests tests;
    private final ResultProjection projection;
    private final PlantLimitRecords limits;
    private final TransactionTemplate transaction;
    private final JsonMapper json = JsonMapper.builder().build();

    MachineStates(
            StoredStates states,
            Compressors compressors,
            Histories histories,
            PumpUpTests tests,
            ResultProjection projection,
            PlantLimitRecords limits,
            TransactionTemplate transaction) {
        this.states = states;
        this.compressors = compressors;
        this.histories = histories;
        this.tests = tests;
        this.projection = projection;
        this.limits = limits;
        this.transaction = transaction;
    }

    /** What else is known of the last tests. */
    public StateDetail detail(MachineState state) {
        return json.readValue(state.detail(), StateDetail.class);
    }

    /** Judges a machine anew. It stays locked until the end of the transaction, so that no test is overlooked. */
    @Override
    @Transactional
    public void changed(long compressorId) {
        Compressor compressor = compressors.findLockedById(compressorId).orElseThrow();
        MachineHistory history = histories.of(compressorId);
        history.last().ifPresent(last -> states.save(state(last, history, limitsOf(compressor))));
    }

    private Limits limitsOf(Compressor compressor) {
        return limits.findById(compressor.site().id()).map(PlantLimits::limits).orElse(Limits.DEFAULT);
    }

    private MachineState state(ResultLine last, MachineHistory history, Limits itsLimits) {
        Map<Long, PumpUpResult> results = projection.results(List.of(last.testId()));
        PumpUpResult result = results.get(last.testId());
        GaugeState gauge = GaugeState.of(tests.findById(last.testId()).orElseThrow());
        Judgement judgement = Judgement.of(history, result, gauge, itsLimits);
        return new MachineState(last, judgement, json.writeValueAsString(judgement.detail(history, result)));
    }

    /** Holds every machine of a site until the end of the transaction. */
    @Transactional
    public void lockSite(long siteId) {
        states.compressorsOf(siteId).forEach(compressors::findLockedById);
    }

    /** Judges every machine of a site anew. */
    @Transactional
    public void renewSite(long siteId) {
        states.compressorsOf(siteId).forEach(this::changed);
    }

    /** How many machines have tests and no state; {@link #fill} would judge them. */
    @Transactional(readOnly = true)
    public long waiting() {
        return states.waiting();
    }

    /**
     * Judges the machines that have tests and no state, as after loading tests by SQL.
     *
     * @return how many there were
     */
    public int fill() {
        List<Long> missing = transaction.execute(status -> states.missing());
        renew(missing, done -> {});
        return missing.size();
    }

    /**
     * Throws every state away and makes it anew.
     *
     * @param progress told now and then how many machines are done
     * @return how many machines there were
     */
    public int rebuild(LongConsumer progress) {
        transaction.executeWithoutResult(status -> states.deleteAll());
        List<Long> tested = transaction.execute(status -> states.tested());
        renew(tested, progress);
        return tested.size();
    }

    private void renew(List<Long> compressorIds, LongConsumer progress) {
        for (int from = 0; from < compressorIds.size(); from += BATCH) {
            List<Long> batch = compressorIds.subList(from, Math.min(from + BATCH, compressorIds.size()));
            batch.forEach(id -> transaction.executeWithoutResult(status -> changed(id)));
            progress.accept(from + batch.size());
        }
    }
}
