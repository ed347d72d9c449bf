package plantair.leaktest;

import java.time.LocalDate;
import plantair.quantity.GaugePressure;
import plantair.quantity.MeasuredFlow;

/**
 * What the air system of a site loses by leaks.
 *
 * @param testId the leak test
 * @param on the day of the test where it was made
 * @param flow free air at the intake, with its standard uncertainty
 * @param at gauge pressure at which it leaks so much
 */
public record SiteLeak(long testId, LocalDate on, MeasuredFlow flow, GaugePressure at) {}
