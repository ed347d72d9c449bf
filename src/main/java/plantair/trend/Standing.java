package plantair.trend;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where a compressor stands against its limits (T12). One test alone never crosses a limit: a second one below it must
 * follow, or the line through all tests must show the decline. And a difference from the baseline that is smaller than its
 * uncertainty crosses nothing.
 *
 * <p>Checked by: StandingTests.
 */
public enum Standing {
    /** No test that joins the trend, or none besides the baseline. */
    NOT_KNOWN,
    /** At or above the limit for watching. */
    OK,
    /** The figure is low, and the tests are too uncertain to tell it from the baseline. */
    CANNOT_BE_TOLD,
    /** One test is below a limit and nothing confirms it yet. */
    REPEAT,
    /** Below the first limit. */
    WATCH,
    /** Below the second. */
    PLAN,
    /** Below the third. */
    ACT;

    /** One-sided 95 %. */
    private static final double FACTOR = 1.645;

    /**
     * The standing of a compressor.
     *
     * @param limits of its plant
     * @param newestFirst the tests since the baseline against it, newest first, the baseline itself left out
     * @param line the line at the last test against the baseline, given only when a decline is signalled
     */
    public static Standing of(Limits limits, List<BaselineComparison> newestFirst, @Nullable BaselineComparison line) {
        if (newestFirst.isEmpty()) {
            return NOT_KNOWN;
        }
        BaselineComparison last = newestFirst.get(0);
        Standing alone = limits.of(last.ratio());
        BaselineComparison confirmed = confirmed(newestFirst, line);
        if (confirmed == null) {
            return alone == OK ? OK : told(last, REPEAT);
        }
        Standing standing = limits.of(confirmed.ratio());
        if (standing != OK) {
            return told(confirmed, standing);
        }
        return alone == OK ? OK : told(last, REPEAT);
    }

    /** The ratio that more than one test stands behind. */
    private static @Nullable BaselineComparison confirmed(
            List<BaselineComparison> newestFirst, @Nullable BaselineComparison line) {
        if (line != null) {
            return line;
        }
        return newestFirst.size() < 2 ? null : better(newestFirst.get(0), newestFirst.get(1));
    }

    private static BaselineComparison better(BaselineComparison one, BaselineComparison other) {
        return one.ratio() >= other.ratio() ? one : other;
    }

    private static Standing told(BaselineComparison comparison, Standing standing) {
        boolean below = comparison.ratio() + FACTOR * comparison.standardUncertainty() < 1;
        return below ? standing : CANNOT_BE_TOLD;
    }

    /** Whether a limit was crossed. */
    public boolean isCrossed() {
        return this == WATCH || this == PLAN || this == ACT;
    }
}
