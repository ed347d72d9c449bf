package plantair.demand;

import org.jspecify.annotations.Nullable;
import plantair.leaktest.SiteLeak;
import plantair.quantity.MeasuredFlow;

/**
 * The leaks that a capacity is told less of.
 *
 * @param flow free air; zero where none are known
 * @param from where they come from
 * @param test the leak test; null unless they come from one
 */
public record LeaksUsed(
        MeasuredFlow flow, LeaksFrom from, @Nullable SiteLeak test) {}
