package plantair.offer.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.web.Words;

/**
 * Offers side by side in words and in the units of a person.
 *
 * @param pressure at which they are put
 * @param station of the site
 * @param need free air for which energy and money are told
 * @param hours in a year
 * @param tariff with its currency; null when not known
 * @param currency of the money; empty when not known
 * @param rows offers that can be compared, then machines of the site
 * @param notCompared those that cannot be
 * @param verdicts what can be told
 */
record CompareView(
        String pressure,
        String station,
        String need,
        String hours,
        @Nullable String tariff,
        String currency,
        List<Row> rows,
        List<NotCompared> notCompared,
        List<Words> verdicts) {

    /**
     * One offer, or one machine of the site, at the site.
     *
     * @param label whose
     * @param href its page
     * @param stated as its data sheet states it; day of the test of a machine
     * @param measured whether it is a machine of the site
     * @param freeAir at the intake of the site
     * @param standard the same air at the standard state
     * @param power electric
     * @param perHundredCfm specific power
     * @param perCubicMetre specific power
     * @param moved by how much the absolute pressure was moved
     * @param far whether that is more than its power can fairly be moved
     * @param small whether it delivers less than what is needed
     * @param energy of a year
     * @param money of a year; null when not known
     */
    record Row(
            String label,
            String href,
            String stated,
            boolean measured,
            String freeAir,
            String standard,
            String power,
            String perHundredCfm,
            String perCubicMetre,
            String moved,
            boolean far,
            boolean small,
            String energy,
            @Nullable String money) {}

    /**
     * An offer that cannot be compared.
     *
     * @param label whose
     * @param basis name of the basis of its flow
     */
    record NotCompared(String label, String basis) {}
}
