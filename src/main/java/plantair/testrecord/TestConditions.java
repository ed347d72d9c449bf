package plantair.testrecord;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.AirTemperature;
import plantair.quantity.Entered;

/**
 * What was read once in a test, and what was copied of the site and the plate on that day.
 *
 * @param siteElevation copied from the site
 * @param siteBarometer copied from the site
 * @param barometer read in the test; null when not read
 * @param intakeTemperature air at the intake
 * @param intakeHumidity relative humidity at the intake; null when not read
 * @param airTemperature how the receiver air was treated
 * @param water liquid water left inside; null when drained
 * @param speed shaft speed read; null when not read
 * @param ratedSpeed copied from the compressor
 */
@Embeddable
public record TestConditions(
        @Nullable Entered siteElevation,
        @Nullable Entered siteBarometer,
        @Nullable Entered barometer,
        Entered intakeTemperature,
        @Nullable Entered intakeHumidity,
        @Enumerated(EnumType.STRING) AirTemperature airTemperature,
        @Nullable Entered water,
        @Nullable Entered speed,
        @Nullable Entered ratedSpeed) {}
