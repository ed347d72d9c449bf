package plantair.history;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.site.SiteFacts;
import plantair.trend.BaselineComparison;
import plantair.trend.CostOfWaiting;

/**
 * What is known of the cost of leaving a machine as it is.
 *
 * @param compressorId the machine
 * @param siteId its site
 * @param site what the register says of it
 * @param comparison its output beside the baseline; null when nothing can be compared
 * @param byLine whether that is the line through its tests, and not the last test alone
 * @param inputs what is known of hours, power and tariff
 * @param powerReadOn day of the test that read the power; null when none did
 */
public record WaitingCost(
        long compressorId,
        long siteId,
        SiteFacts site,
        @Nullable BaselineComparison comparison,
        boolean byLine,
        CostOfWaiting.Inputs inputs,
        @Nullable LocalDate powerReadOn) {

    /** The same at another tariff. */
    public WaitingCost at(@Nullable Double tariff) {
        return new WaitingCost(
                compressorId,
                siteId,
                site,
                comparison,
                byLine,
                new CostOfWaiting.Inputs(inputs.loadedHours(), inputs.power(), tariff),
                powerReadOn);
    }

    /** The cost; empty when nothing can be compared or told. */
    public Optional<CostOfWaiting> cost() {
        return comparison == null ? Optional.empty() : CostOfWaiting.of(comparison, inputs);
    }
}
