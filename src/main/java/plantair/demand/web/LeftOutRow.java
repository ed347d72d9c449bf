package plantair.demand.web;

import org.jspecify.annotations.Nullable;

/**
 * A machine that does not count.
 *
 * @param id of the compressor
 * @param tag how the plant calls it
 * @param why why not, and what to do
 * @param gap whether the capacity may be larger than told
 * @param testId its newest good test; null without
 */
record LeftOutRow(
        long id,
        String tag,
        String why,
        boolean gap,
        @Nullable Long testId) {}
