package plantair.transfer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.equipment.PipePieces;
import plantair.equipment.Receivers;
import plantair.instrument.Calibrations;
import plantair.instrument.Instrument;
import plantair.instrument.InstrumentKind;
import plantair.instrument.Instruments;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.VolumeCopy;

/** Finds in the registers what a log names by its tag, case aside. Remembers machines and volumes; made for one reading. */
final class RegisterLookup {

    /** A piece in the column {@code volumes} of tests.csv. */
    private static final Pattern PIECE =
            Pattern.compile("(RECEIVER|PIPE) (.*): (?:length )?-?[\\d.]+ .*", Pattern.DOTALL);

    private final Compressors compressors;
    private final Receivers receivers;
    private final PipePieces pipes;
    private final Instruments instruments;
    private final Calibrations calibrations;
    private final Map<String, Optional<Compressor>> machines = new HashMap<>();
    private final Map<String, Optional<VolumeCopy>> volumes = new HashMap<>();

    RegisterLookup(
            Compressors compressors,
            Receivers receivers,
            PipePieces pipes,
            Instruments instruments,
            Calibrations calibrations) {
        this.compressors = compressors;
        this.receivers = receivers;
        this.pipes = pipes;
        this.instruments = instruments;
        this.calibrations = calibrations;
    }

    Optional<Compressor> compressor(Cells cells) {
        Optional<String> site = cells.text("site", 80, true);
        Optional<String> tag = cells.text("compressor", 40, true);
        if (site.isEmpty() || tag.isEmpty()) {
            return Optional.empty();
        }
        Optional<Compressor> found = machines.computeIfAbsent(
                (site.get() + "\n" + tag.get()).toLowerCase(Locale.ROOT),
                key -> compressors.findBySiteFactsNameIgnoreCaseAndPlateTagIgnoreCase(site.get(), tag.get()).stream()
                        .findFirst());
        if (found.isEmpty()) {
            cells.reject("compressor", "import.noCompressor", tag.get(), site.get());
        }
        return found;
    }

    /** The receivers and pipes that a test names, as the register has them now. */
    List<VolumeCopy> volumes(Cells cells, Compressor compressor) {
        long site = compressor.site().id();
        List<VolumeCopy> found = new ArrayList<>();
        for (String tag : tags(cells, "receivers", "RECEIVER")) {
            known(
                            "R" + site + tag,
                            () -> receivers
                                    .findFirstBySiteIdAndFactsTagIgnoreCase(site, tag)
                                    .map(VolumeCopy::of))
                    .ifPresentOrElse(found::add, () -> cells.reject("receivers", "import.noReceiver", tag));
        }
        for (String tag : tags(cells, "pipes", "PIPE")) {
            known(
                            "P" + site + tag,
                            () -> pipes.findFirstBySiteIdAndFactsTagIgnoreCase(site, tag)
                                    .map(VolumeCopy::of))
                    .ifPresentOrElse(found::add, () -> cells.reject("pipes", "import.noPipe", tag));
        }
        if (found.isEmpty() && cells.isSound()) {
            cells.reject("receivers", "test.noReceiver");
        }
        return found;
    }

    private Optional<VolumeCopy> known(String key, Supplier<Optional<VolumeCopy>> search) {
        return volumes.computeIfAbsent(key, unknown -> search.get());
    }

    private static List<String> tags(Cells cells, String column, String kind) {
        String listed = cells.text(column, 1000, false).orElse("");
        List<String> tags = new ArrayList<>();
        if (listed.isEmpty()) {
            for (String piece : cells.cell("volumes").split("; (?=RECEIVER |PIPE )")) {
                Matcher matcher = PIECE.matcher(piece);
                if (matcher.matches() && matcher.group(1).equals(kind)) {
                    tags.add(matcher.group(2));
                }
            }
        }
        for (String tag : listed.split(";")) {
            if (!tag.isBlank()) {
                tags.add(tag.strip());
            }
        }
        return tags;
    }

    /** The instruments that a test names, as they were on its day. */
    List<InstrumentCopy> instruments(Cells cells, LocalDate day) {
        List<InstrumentCopy> copies = new ArrayList<>();
        instrument(cells, "gauge_tag", InstrumentKind.GAUGE, day).ifPresent(copies::add);
        instrument(cells, "timer_tag", InstrumentKind.TIMER, day).ifPresent(copies::add);
        instrument(cells, "thermometer_tag", InstrumentKind.THERMOMETER, day).ifPresent(copies::add);
        instrument(cells, "barometer_tag", InstrumentKind.BAROMETER, day).ifPresent(copies::add);
        copies.stream()
                .filter(copy ->
                        copy.isPastItsDate() && cells.cell("override_reason").isEmpty())
                .findFirst()
                .ifPresent(copy ->
                        cells.reject("override_reason", "test.pastItsDate", copy.tag(), String.valueOf(copy.dueOn())));
        return copies;
    }

    private Optional<InstrumentCopy> instrument(Cells cells, String column, InstrumentKind kind, LocalDate day) {
        Optional<String> tag = cells.text(column, 40, false);
        Optional<Instrument> found = tag.flatMap(instruments::findFirstByFactsTagIgnoreCase)
                .filter(instrument -> instrument.facts().kind() == kind);
        if (tag.isPresent() && found.isEmpty()) {
            cells.reject(column, "test.noSuchInstrument");
        }
        return found.map(instrument -> InstrumentCopy.of(
                instrument, calibrations.findLatest(instrument.id(), day).orElse(null), day));
    }
}
