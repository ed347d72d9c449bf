package plantair.testrecord.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.springframework.validation.Errors;
import plantair.quantity.DurationUnit;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.NumberProblem;
import plantair.quantity.PressureUnit;
import plantair.quantity.Unit;
import plantair.testrecord.Lap;
import plantair.testrecord.Laps;

/**
 * Reads the marks of a run: {@code 150 psi @ 12.4 s; 160 psi @ 31.0 s}.
 *
 * @param errors of the form
 */
record LapsReader(Errors errors) {

    private static final Pattern MARK = Pattern.compile("(\\S+)\\s+(\\S+)\\s*@\\s*(\\S+)\\s+(s|min|\\(?m:ss\\)?)");
    private static final int MOST = 40;

    /** The marks; empty when none was typed or something was rejected. */
    Optional<Laps> read(String path, String typed) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        List<Lap> laps = new ArrayList<>();
        for (String mark : typed.strip().split("\\s*;\\s*")) {
            Optional<Lap> lap = lap(mark.strip());
            if (lap.isEmpty()) {
                errors.rejectValue(path, "test.lapUnreadable", new Object[] {mark.strip()}, null);
                return Optional.empty();
            }
            laps.add(lap.get());
        }
        if (laps.size() > MOST) {
            errors.rejectValue(path, "test.tooManyLaps", new Object[] {MOST}, null);
            return Optional.empty();
        }
        return Optional.of(new Laps(laps));
    }

    /** Whether pressures and times rise from the start of the run to its stop. */
    static boolean rise(Entered start, Laps laps, Entered stop, Entered elapsed) {
        double pressure = GaugePressure.of(start).pascals();
        double time = 0;
        for (Lap lap : Stream.concat(laps.marks().stream(), Stream.of(new Lap(stop, elapsed)))
                .toList()) {
            double nextPressure = GaugePressure.of(lap.pressure()).pascals();
            double nextTime = Elapsed.of(lap.at()).seconds();
            if (!(nextPressure > pressure) || !(nextTime > time)) {
                return false;
            }
            pressure = nextPressure;
            time = nextTime;
        }
        return true;
    }

    private static Optional<Lap> lap(String mark) {
        Matcher parts = MARK.matcher(mark);
        if (!parts.matches()) {
            return Optional.empty();
        }
        Optional<PressureUnit> unit = Stream.of(PressureUnit.values())
                .filter(known ->
                        known.symbol().equals(parts.group(2)) || known.code().equals(parts.group(2)))
                .findFirst();
        Unit time = parts.group(3).contains(":")
                ? DurationUnit.MINUTES_SECONDS
                : parts.group(4).equals("min") ? DurationUnit.MINUTE : DurationUnit.SECOND;
        boolean numbers = NumberProblem.in(parts.group(1)).isEmpty()
                && !parts.group(1).contains(":")
                && NumberProblem.in(parts.group(3)).isEmpty();
        return unit.filter(known -> numbers && isPossible(parts, known, time))
                .map(known -> new Lap(new Entered(parts.group(1), known), new Entered(parts.group(3), time)));
    }

    /** Below the absence of all air, or before the start, is no reading. */
    private static boolean isPossible(Matcher parts, PressureUnit unit, Unit time) {
        try {
            GaugePressure.of(new Entered(parts.group(1), unit));
            return Elapsed.of(new Entered(parts.group(3), time)).seconds() > 0;
        } catch (IllegalArgumentException impossible) {
            return false;
        }
    }
}
