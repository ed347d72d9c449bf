package plantair.history.web;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plantair.history.StateDetail.Dot;
import plantair.quantity.Rounded;

/**
 * The last tests as a small picture. Every machine has the same scale, 75 to 105 % of baseline, so that pictures can be
 * compared; what lies beyond is drawn at the edge.
 *
 * @param points of the line through the tests that join the trend
 * @param dots one for each test
 * @param baseline height of 100 %
 * @param told the same in words
 */
public record SmallLine(String points, List<Mark> dots, String baseline, String told) {

    static final double WIDTH = 120;
    static final double HEIGHT = 40;
    private static final double EDGE = 4;
    private static final double LOWEST = 0.75;
    private static final double HIGHEST = 1.05;

    /**
     * A test.
     *
     * @param x from the left
     * @param y from the top
     * @param joins whether it joins the trend
     */
    public record Mark(String x, String y, boolean joins) {}

    /** The picture of some tests, oldest first, at least one. */
    static SmallLine of(List<Dot> tests, String told) {
        LocalDate first = tests.get(0).date();
        double days = Math.max(
                1, ChronoUnit.DAYS.between(first, tests.get(tests.size() - 1).date()));
        List<Mark> marks = new ArrayList<>();
        for (Dot test : tests) {
            double along = tests.size() == 1 ? 1 : ChronoUnit.DAYS.between(first, test.date()) / days;
            marks.add(new Mark(text(EDGE + along * (WIDTH - 2 * EDGE)), text(height(test.part())), test.joins()));
        }
        String points = marks.stream()
                .filter(Mark::joins)
                .map(mark -> mark.x() + "," + mark.y())
                .collect(Collectors.joining(" "));
        return new SmallLine(points, List.copyOf(marks), text(height(1)), told);
    }

    private static double height(double part) {
        double within = Math.min(HIGHEST, Math.max(LOWEST, part));
        return EDGE + (HIGHEST - within) / (HIGHEST - LOWEST) * (HEIGHT - 2 * EDGE);
    }

    private static String text(double length) {
        return Rounded.places(length, 1);
    }
}
