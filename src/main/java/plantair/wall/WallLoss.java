package plantair.wall;

import java.time.temporal.ChronoUnit;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Length;
import plantair.statistics.TypeB;

/**
 * What the wall lost at one place between two days.
 *
 * <p>W1: lost = t_earlier − t_later; u(lost)² = u_earlier² + u_later² with u = a/√3 for an instrument of limits ± a. The
 * two readings count as independent: the probe is set down anew, on another coat of paint, often with another instrument.
 *
 * <p>W2: rate = lost/years, a year being 365.25 days. A loss is told where it is more than 2 u(lost); without a known
 * error of the instruments every loss above zero is told, and its uncertainty is not known.
 *
 * <p>Source: rate of metal loss between two measurements as inspection codes of the process industry define it (API 510,
 * from memory); the rule of 2 u is ours. Checked by: WallReferenceTests.
 *
 * @param earlier first reading
 * @param later second reading, on a later day
 */
public record WallLoss(WallReading earlier, WallReading later) {

    static final double COVERAGE = 2;
    private static final double DAYS_A_YEAR = 365.25;

    /** @throws IllegalArgumentException when the second reading is not of a later day */
    public WallLoss {
        if (!later.day().isAfter(earlier.day())) {
            throw new IllegalArgumentException(later.day() + " is not after " + earlier.day());
        }
    }

    /** Metres lost; below zero where it reads thicker. */
    public double lost() {
        return earlier.thickness().metres() - later.thickness().metres();
    }

    /** Standard uncertainty of the loss, m; empty when the error of an instrument is not known. */
    public OptionalDouble uLost() {
        OptionalDouble first = u(earlier);
        OptionalDouble second = u(later);
        return first.isPresent() && second.isPresent()
                ? OptionalDouble.of(Math.sqrt(square(first.getAsDouble()) + square(second.getAsDouble())))
                : OptionalDouble.empty();
    }

    /** Years between the readings. */
    public double years() {
        return ChronoUnit.DAYS.between(earlier.day(), later.day()) / DAYS_A_YEAR;
    }

    /** Metres a year; below zero where it reads thicker. */
    public double rate() {
        return lost() / years();
    }

    /** Standard uncertainty of the rate, m a year; empty when the error of an instrument is not known. */
    public OptionalDouble uRate() {
        OptionalDouble u = uLost();
        return u.isPresent() ? OptionalDouble.of(u.getAsDouble() / years()) : u;
    }

    /** What it says; never that there is one reading only. */
    public WallCode code() {
        double limit = COVERAGE * uLost().orElse(0);
        if (lost() > limit) {
            return WallCode.THINNING;
        }
        return lost() < -limit ? WallCode.THICKER : WallCode.NO_LOSS_TOLD;
    }

    static OptionalDouble u(WallReading reading) {
        @Nullable Length error = reading.largestError();
        return error == null ? OptionalDouble.empty() : OptionalDouble.of(TypeB.rectangular(error.metres()));
    }

    static double square(double x) {
        return x * x;
    }
}
