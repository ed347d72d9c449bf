package plantair.due.web;

import org.jspecify.annotations.Nullable;
import plantair.due.DueInterval;
import plantair.due.DueWords;

/**
 * One interval of a site.
 *
 * @param kind code of what is to be done
 * @param what the same in words
 * @param months null where there is none
 * @param authority that the site names, may be empty
 * @param isSet whether the site set it
 */
record IntervalRow(String kind, String what, @Nullable Integer months, String authority, boolean isSet) {

    static IntervalRow of(DueInterval interval, DueWords words) {
        return new IntervalRow(
                interval.kind().name(),
                words.kind(interval.kind()),
                interval.facts().months(),
                interval.facts().authority(),
                interval.isSet());
    }
}
