package plantair.history;

import plantair.equipment.Compressor;
import plantair.equipment.CompressorFacts;
import plantair.testrecord.MachineHistory;

/**
 * A compressor and what it has delivered.
 *
 * @param compressor the machine
 * @param history its current tests
 */
public record Machine(Compressor compressor, MachineHistory history) {

    public boolean isRetired() {
        return !compressor.isInService();
    }

    public CompressorFacts facts() {
        return compressor.facts();
    }
}
