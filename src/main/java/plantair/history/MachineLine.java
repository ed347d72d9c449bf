package plantair.history;

import org.jspecify.annotations.Nullable;
import plantair.equipment.CompressorKind;

/**
 * One machine in the overview.
 *
 * @param compressorId the machine
 * @param tag how the plant calls it
 * @param site name of its site
 * @param kind how it compresses
 * @param inService false once it is retired
 * @param state what its tests come to; null when it was never tested
 */
public record MachineLine(
        long compressorId,
        String tag,
        String site,
        CompressorKind kind,
        boolean inService,
        @Nullable MachineState state) {}
