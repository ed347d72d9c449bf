package plantair.history;

import java.util.Comparator;
import plantair.equipment.Compressor;
import plantair.equipment.CompressorFacts;
import plantair.pumpup.Severity;
import plantair.testrecord.MachineHistory;
import plantair.trend.BaselineComparison;

/**
 * A compressor and what it has delivered.
 *
 * @param compressor the machine
 * @param history its current tests
 */
public record Machine(Compressor compressor, MachineHistory history) {

    /**
     * Hazard or stop on the last test first, then the lowest part of baseline, machines without tests last; retired ones
     * after all that.
     */
    static final Comparator<Machine> WORST_FIRST = Comparator.comparing(Machine::isRetired)
            .thenComparingInt(Machine::rank)
            .thenComparingDouble(Machine::partOfBaseline);

    public boolean isRetired() {
        return !compressor.isInService();
    }

    public CompressorFacts facts() {
        return compressor.facts();
    }

    private int rank() {
        return history.last()
                .map(last -> last.severity() == Severity.HAZARD ? 0 : last.severity() == Severity.STOP ? 1 : 2)
                .orElse(3);
    }

    /** One while only the baseline itself is there. */
    private double partOfBaseline() {
        return history.last()
                .flatMap(history::ofBaseline)
                .map(BaselineComparison::ratio)
                .orElse(1.0);
    }
}
