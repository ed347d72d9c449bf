package plantair.history.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.equipment.Compressor;
import plantair.equipment.Receivers;
import plantair.history.PassByCard;
import plantair.history.PassByCards;
import plantair.instrument.Calibration;
import plantair.instrument.Calibrations;
import plantair.paper.PrintedAddress;
import plantair.paper.QrCode;
import plantair.pumpup.PumpUpReadings;
import plantair.pumpup.VolumePart;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.ResultProjection;
import plantair.testrecord.VolumeCopy;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** From a machine and its pass-by card to its run sheet. */
@Component
class SheetViews {

    private final PassByCards cards;
    private final CardViews faces;
    private final ResultProjection projection;
    private final Receivers receivers;
    private final Calibrations calibrations;
    private final PrintedAddress address;

    SheetViews(
            PassByCards cards,
            CardViews faces,
            ResultProjection projection,
            Receivers receivers,
            Calibrations calibrations,
            PrintedAddress address) {
        this.cards = cards;
        this.faces = faces;
        this.projection = projection;
        this.receivers = receivers;
        this.calibrations = calibrations;
        this.address = address;
    }

    /** The sheet, inside a transaction. */
    SheetView of(long compressorId, UnitSet units) {
        PassByCard card = cards.of(compressorId);
        Compressor compressor = card.compressor();
        PumpUpTest baseline = card.baseline();
        var plate = compressor.facts().plate();
        return new SheetView(
                compressor.id(),
                compressor.tag(),
                compressor.site().name(),
                plate.makerModel(),
                plate.kind().name(),
                compressor.facts().ratings().stream()
                        .map(rating -> rating.flow() + " / " + rating.pressure())
                        .toList(),
                baseline == null ? null : numbers(baseline, QuantityFormat.of(units)),
                faces.of(card, units).face(),
                baseline == null
                        ? List.of()
                        : baseline.instruments().stream()
                                .map(copy -> gauge(copy, card.today()))
                                .toList(),
                SheetReading.of(plate).stream()
                        .map(reading -> "sheet.reading." + reading)
                        .toList(),
                QrCode.of(address.guided(compressor.tag())),
                address.isLocal(),
                card.today().toString());
    }

    private SheetView.Numbers numbers(PumpUpTest baseline, QuantityFormat format) {
        PumpUpReadings readings = projection.readings(baseline);
        return new SheetView.Numbers(
                baseline.volumes().stream().map(SheetViews::volume).collect(Collectors.joining(", ")),
                format.vessel(readings.netVolume()),
                readings.allowablePressure() == null ? "" : format.gauge(readings.allowablePressure()),
                baseline.volumes().stream()
                        .filter(copy -> copy.kind() == VolumePart.Kind.RECEIVER)
                        .flatMap(this::relief)
                        .collect(Collectors.joining(", ")));
    }

    private static String volume(VolumeCopy copy) {
        return copy.volume() == null
                ? copy.label() + " (" + copy.length() + " × " + copy.bore() + ")"
                : copy.label() + " (" + copy.volume() + ")";
    }

    private Stream<String> relief(VolumeCopy copy) {
        return receivers.findById(copy.sourceId()).stream()
                .map(receiver -> receiver.facts().reliefSet())
                .filter(Objects::nonNull)
                .map(set -> copy.label() + ": " + set);
    }

    private SheetView.Gauge gauge(InstrumentCopy copy, LocalDate today) {
        Optional<Calibration> latest = calibrations.findLatest(copy.instrumentId(), today);
        return new SheetView.Gauge(
                code(latest.orElse(null), today),
                copy.tag(),
                latest.map(found -> found.dueOn().toString()).orElse(""));
    }

    private static String code(@Nullable Calibration latest, LocalDate today) {
        if (latest == null) {
            return "sheet.gauge.none";
        }
        return latest.dueOn().isBefore(today) ? "sheet.gauge.past" : "sheet.gauge.value";
    }
}
