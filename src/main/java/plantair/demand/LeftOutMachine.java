package plantair.demand;

import org.jspecify.annotations.Nullable;
import plantair.testrecord.MeasuredOutput;

/**
 * A machine in service that does not count for the capacity of its site.
 *
 * @param id of the compressor
 * @param tag how the plant calls it
 * @param why why not
 * @param output as it was measured; null without a test
 */
public record LeftOutMachine(
        long id, String tag, Reason why, @Nullable MeasuredOutput output) {

    /** Why a machine does not count. */
    public enum Reason {
        /** No test of it joins the trend. */
        NO_TEST(true),
        /** It was tested too far from the pressure of the site. */
        FAR(true),
        /** The site says that it does not run with the others. */
        STANDBY(false),
        /** Somebody asks what if it did not run. */
        SUPPOSED(false);

        private final boolean gap;

        Reason(boolean gap) {
            this.gap = gap;
        }

        /** Whether the true capacity may be larger than what is told. */
        public boolean isGap() {
            return gap;
        }
    }
}
