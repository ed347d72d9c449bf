package plantair.leaktest.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plantair.leaktest.FallReading;
import plantair.pumpup.PossibleRange;
import plantair.quantity.DurationUnit;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.NumberProblem;
import plantair.quantity.PressureUnit;
import plantair.quantity.Unit;
import plantair.register.Submission;

/**
 * Reads lines of time and pressure: {@code 30 7.93}, or {@code 0:30 7.93}.
 *
 * @param sent the form
 */
record PastedReadings(Submission sent) {

    /** More than any gauge is read by hand, and what a page still shows. */
    static final int MOST = 500;

    private static final double LONGEST_S = PossibleRange.ELAPSED.highest();

    /** The readings; empty when a line cannot be read, which is told beside the text. */
    List<FallReading> read(String text, String timeCode, String pressureCode) {
        List<FallReading> readings = new ArrayList<>();
        List<String> lines = text.strip().lines().toList();
        if (lines.size() > MOST) {
            sent.reject("pasted", "leakTest.pasted.many", lines.size(), MOST);
            return List.of();
        }
        Optional<DurationUnit> time = unit("pastedTime", timeCode, DurationUnit.class);
        Optional<PressureUnit> pressure = unit("pastedPressure", pressureCode, PressureUnit.class);
        if (time.isEmpty() || pressure.isEmpty()) {
            return List.of();
        }
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            Optional<FallReading> reading = line(line, time.get(), pressure.get());
            if (reading.isEmpty()) {
                sent.reject("pasted", "leakTest.pasted.line", i + 1, shortened(line));
                return List.of();
            }
            readings.add(reading.get());
        }
        return readings;
    }

    private <U extends Unit> Optional<U> unit(String path, String code, Class<U> kind) {
        Optional<U> unit = Unit.byCode(code).filter(kind::isInstance).map(kind::cast);
        if (unit.isEmpty()) {
            sent.reject(path, "unit.unknown", shortened(code));
        }
        return unit;
    }

    private static Optional<FallReading> line(String line, DurationUnit time, PressureUnit pressure) {
        String[] both = line.split("[\\s;,]+");
        if (both.length != 2 || !isNumber(both[0]) || !isNumber(both[1]) || both[1].indexOf(':') >= 0) {
            return Optional.empty();
        }
        boolean colon = both[0].indexOf(':') >= 0;
        if (!colon && time == DurationUnit.MINUTES_SECONDS) {
            return Optional.empty();
        }
        var reading = new FallReading(
                new Entered(both[0], colon ? DurationUnit.MINUTES_SECONDS : time), new Entered(both[1], pressure));
        return isPossible(reading) ? Optional.of(reading) : Optional.empty();
    }

    private static boolean isNumber(String text) {
        return NumberProblem.in(text).isEmpty();
    }

    /** A pressure of a receiver, at a time from zero to a day. */
    static boolean isPossible(FallReading reading) {
        try {
            double seconds = FallReading.seconds(reading.atTime());
            double pascals = GaugePressure.of(reading.pressure()).pascals();
            return seconds >= 0 && seconds <= LONGEST_S && PossibleRange.GAUGE_PRESSURE.contains(pascals);
        } catch (IllegalArgumentException impossible) {
            return false;
        }
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }

    /** The lines once more. */
    static String text(List<FallReading> readings) {
        return readings.stream()
                .map(reading ->
                        reading.atTime().number() + " " + reading.pressure().number())
                .collect(Collectors.joining("\n"));
    }

    /** The unit of the times without a colon. */
    static Unit timeUnit(List<FallReading> readings) {
        return readings.stream()
                .map(reading -> reading.atTime().unit())
                .filter(unit -> unit != DurationUnit.MINUTES_SECONDS)
                .findFirst()
                .orElse(DurationUnit.SECOND);
    }
}
