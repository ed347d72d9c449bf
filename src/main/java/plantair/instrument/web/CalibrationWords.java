package plantair.instrument.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import plantair.instrument.AsFound;
import plantair.instrument.Calibration;
import plantair.instrument.CalibrationStatus;
import plantair.web.Choices;
import plantair.web.Status;

/** What calibrations say, in words, and which day it is for them. */
@Component
final class CalibrationWords {

    private final Choices choices;
    private final MessageSource messages;
    private final Clock clock;

    CalibrationWords(Choices choices, MessageSource messages, Clock clock) {
        this.choices = choices;
        this.messages = messages;
        this.clock = clock;
    }

    /** An instrument has no site, so its day is that of UTC. */
    Status status(@Nullable Calibration latest) {
        CalibrationStatus status = CalibrationStatus.of(latest, LocalDate.now(clock));
        var kind = switch (status) {
            case IN_DATE -> Status.Kind.GOOD;
            case DUE_SOON -> Status.Kind.WATCH;
            case OVERDUE, OUT_OF_ORDER -> Status.Kind.ALARM;
            case NO_CERTIFICATE -> Status.Kind.NONE;
        };
        return new Status(kind, choices.label("calibration.status", status));
    }

    /** The last day that anybody on Earth can call today. */
    LocalDate latestToday() {
        return LocalDate.now(clock.withZone(ZoneOffset.ofHours(14)));
    }

    /** One point: {@code 175 psi: reads 4 psi high}. */
    String found(AsFound point) {
        double error = point.error().value();
        String code = error == 0 ? "right" : error > 0 ? "high" : "low";
        String size = point.error().toString();
        Object[] args = {point.reading().toString(), size.startsWith("-") ? size.substring(1) : size};
        return messages.getMessage("calibration.found." + code, args, LocaleContextHolder.getLocale());
    }
}
