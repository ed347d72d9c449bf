package plantair.trend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import plantair.quantity.FlowRate;

/**
 * Quarterly tests of a machine whose truth is known: days up to three weeks early or late, stated uncertainty between 0.7 and 1.4
 * times the nominal one, normal errors of that size times {@code scatter}, those of neighbours correlated by {@code likeness}.
 */
record SimulatedRecord(
        int tests, double nominalU, double declinePercent, double scatter, double likeness, double unevenness) {

    static final LocalDate START = LocalDate.of(2020, 1, 1);

    private static final double FLOW = 0.01;
    private static final double DAYS_PER_YEAR = 365.25;

    static SimulatedRecord of(int tests, double percentU, double declinePercent) {
        return new SimulatedRecord(tests, percentU / 100, declinePercent, 1, 0, 1);
    }

    SimulatedRecord withScatter(double factor) {
        return new SimulatedRecord(tests, nominalU, declinePercent, factor, likeness, unevenness);
    }

    /** Correlation of the errors of neighbours. */
    SimulatedRecord withLikeness(double correlation) {
        return new SimulatedRecord(tests, nominalU, declinePercent, scatter, correlation, unevenness);
    }

    /** Each test with the nominal uncertainty. */
    SimulatedRecord even() {
        return new SimulatedRecord(tests, nominalU, declinePercent, scatter, likeness, 0);
    }

    FlowRate truth(double years) {
        return new FlowRate(FLOW * Math.pow(1 - declinePercent / 100, years));
    }

    List<OutputPoint> draw(Random random) {
        List<OutputPoint> points = new ArrayList<>();
        double error = random.nextGaussian();
        for (int i = 0; i < tests; i++) {
            LocalDate date = START.plusDays(Math.round(i * DAYS_PER_YEAR / 4) + random.nextInt(43) - 21);
            double years = (date.toEpochDay() - START.toEpochDay()) / DAYS_PER_YEAR;
            double u = nominalU * (1 + unevenness * (0.7 * random.nextDouble() - 0.3));
            points.add(new OutputPoint(i, date, truth(years).times(Math.exp(u * scatter * error)), u, List.of()));
            error = likeness * error + Math.sqrt(1 - likeness * likeness) * random.nextGaussian();
        }
        return points;
    }
}
