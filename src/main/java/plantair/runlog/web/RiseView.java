package plantair.runlog.web;

import java.util.List;
import plantair.pumpup.PressureRise;
import plantair.pumpup.TimedPressure;
import plantair.quantity.Elapsed;
import plantair.web.QuantityFormat;

/**
 * The rise in some readings, as ready text.
 *
 * @param points how many readings it has; zero when the pressure does not rise
 * @param from pressure at its foot
 * @param to pressure at its top
 * @param elapsed time between them
 */
record RiseView(int points, String from, String to, String elapsed) {

    /** Fewer readings tell no flow (S2). */
    static final int FEWEST = 6;

    static RiseView of(List<TimedPressure> readings, QuantityFormat format) {
        return of(PressureRise.of(readings), format);
    }

    static RiseView of(PressureRise rise, QuantityFormat format) {
        List<TimedPressure> points = rise.points();
        if (points.isEmpty()) {
            return new RiseView(0, "", "", "");
        }
        TimedPressure first = points.get(0);
        TimedPressure last = points.get(points.size() - 1);
        double seconds = last.seconds() - first.seconds();
        return new RiseView(
                points.size(),
                format.gauge(first.pressure()),
                format.gauge(last.pressure()),
                seconds > 0 ? format.elapsed(new Elapsed(seconds)) : "0 s");
    }
}
