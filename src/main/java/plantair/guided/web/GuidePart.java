package plantair.guided.web;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.guided.MachineReadings;
import plantair.guided.ReadingsLog;
import plantair.testrecord.GuideLog;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.TestPagePart;
import plantair.web.UnitSet;

/** How a test was made at the machine, for the fragment {@code tests/_guide}. */
@Component
final class GuidePart implements TestPagePart {

    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

    private final ReadingsLog log;
    private final FigureWords words;

    GuidePart(ReadingsLog log, FigureWords words) {
        this.log = log;
        this.words = words;
    }

    /** What the page shows; null or empty where there is nothing. */
    public record View(
            boolean guided,
            String deviceAt,
            String serverAt,
            String offset,
            String drained,
            String afterStop,
            String steps,
            @Nullable Long readingsId,
            List<FigureWords.Line> readings) {}

    @Override
    public String attribute() {
        return "guide";
    }

    @Override
    public View of(PumpUpTest test, UnitSet units) {
        Optional<GuideLog> guide = Optional.ofNullable(test.guide());
        Optional<MachineReadings> readings =
                log.findByTestIdOrderById(test.id()).stream().reduce((older, newer) -> newer);
        return new View(
                guide.isPresent() || readings.isPresent(),
                guide.map(GuideLog::deviceRecordedAt)
                        .map(at -> local(at, test.zone()))
                        .orElse(""),
                local(test.recordedAt(), test.zone()),
                offset(guide.map(GuideLog::deviceOffsetMs).orElse(null)),
                guide.map(GuideLog::drained).map(Object::toString).orElse(""),
                guide.map(GuideLog::afterStop)
                        .map(heard -> words.say("guided.afterStop." + heard))
                        .orElse(""),
                guide.map(GuideLog::steps).orElse(""),
                readings.map(MachineReadings::id).orElse(null),
                readings.map(MachineReadings::figures).map(words::of).orElse(List.of()));
    }

    private static String local(Instant at, ZoneId zone) {
        return at.atZone(zone).format(LOCAL);
    }

    /** Small differences are those of the way there and back. */
    private String offset(@Nullable Integer ms) {
        if (ms == null) {
            return words.say("guided.log.offset.unknown");
        }
        Duration apart = Duration.ofMillis(Math.abs((long) ms));
        if (apart.toSeconds() < 1) {
            return words.say("guided.log.offset.right");
        }
        String size = apart.toHours() > 0
                ? apart.toHours() + " h " + apart.toMinutesPart() + " min"
                : apart.toMinutes() + " min " + apart.toSecondsPart() + " s";
        return words.say(ms > 0 ? "guided.log.offset.slow" : "guided.log.offset.fast", size);
    }
}
