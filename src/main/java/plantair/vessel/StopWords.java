package plantair.vessel;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import plantair.equipment.VesselStop;
import plantair.quantity.Entered;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.quantity.Rounded;

/** Stops in words. Pressures stand as they were typed, so that each can be found where it came from. */
@Component
class StopWords {

    private static final int INCH_PLACES = 3;
    private static final int MILLIMETRE_PLACES = 2;

    private final MessageSource messages;

    StopWords(MessageSource messages) {
        this.messages = messages;
    }

    VesselStop stop(StopRules.Found found) {
        String name = found.hazard().name();
        Object[] figures = found.figures().stream().map(String::valueOf).toArray();
        return new VesselStop(
                found.hazard(), say("hazard.why." + name + found.wording(), figures), say("hazard.act." + name));
    }

    String damage(FindingKind kind, String note) {
        String seen = say("finding.kind." + kind);
        return note.isEmpty() ? seen : seen + " – " + note.replace('\n', ' ');
    }

    String reduced(@Nullable Entered pressure, LocalDate day) {
        return say("hazard.why.reduced", String.valueOf(pressure), String.valueOf(day));
    }

    String authority(String named) {
        return named.isEmpty() ? say("due.authority.none") : named;
    }

    String asRegistered() {
        return say("hazard.why.asRegistered");
    }

    String noNumber() {
        return say("hazard.why.noNumber");
    }

    /** In inch and millimetre, since whoever reads a stop may have either instrument. */
    String thickness(@Nullable Length thickness) {
        return thickness == null
                ? ""
                : String.join(
                        ", ",
                        List.of(
                                Rounded.places(thickness.in(LengthUnit.INCH), INCH_PLACES) + " in",
                                Rounded.places(thickness.in(LengthUnit.MILLIMETRE), MILLIMETRE_PLACES) + " mm"));
    }

    private String say(String key, Object... args) {
        Locale locale = LocaleContextHolder.getLocale();
        return messages.getMessage(key, args, locale);
    }
}
