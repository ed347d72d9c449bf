package plantair.testrecord;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Compressor;
import plantair.pumpup.HoldCheck;
import plantair.pumpup.PumpUpReadings;
import plantair.pumpup.StaticHold;
import plantair.pumpup.Station;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Entered;
import plantair.quantity.FlowRate;

/** Judges a static hold while the valve is still shut, beside what the machine delivered last or is rated for. */
@Service
public class PreviewHold {

    private final StoredResults results;

    PreviewHold(StoredResults results) {
        this.results = results;
    }

    /** Empty when the machine has neither a result nor a rating to compare with. */
    @Transactional(readOnly = true)
    public Optional<HoldCheck> of(
            Compressor compressor,
            List<VolumeCopy> volumes,
            @Nullable Entered water,
            @Nullable Entered barometer,
            StaticHold hold) {
        var site = compressor.site().facts();
        var station = new Station(
                barometer == null ? null : AbsolutePressure.of(barometer),
                site.normalBarometer().orElse(null),
                site.height().orElse(null));
        var net = PumpUpReadings.netVolume(TestReadings.volumeParts(volumes, water));
        return usual(compressor).map(flow -> HoldCheck.of(net, station.pressure(), hold, flow));
    }

    private Optional<FlowRate> usual(Compressor compressor) {
        Optional<FlowRate> last = results
                .findByCompressorIdAndCurrentRecordTrueOrderByPerformedAtDescKeyTestIdDesc(compressor.id(), Limit.of(1))
                .stream()
                .flatMap(result -> result.freeAir().stream())
                .findFirst();
        return last.or(() -> compressor.facts().ratings().stream()
                .map(rating -> FlowRate.of(rating.flow()))
                .findFirst());
    }
}
