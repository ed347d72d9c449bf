package plantair.offer.web;

import java.util.Optional;
import plantair.pumpup.PossibleRange;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.web.EnteredField;
import plantair.web.FieldChecks;

/**
 * Readings at which an offer is stated or compared; each must be there and be possible.
 *
 * @param checks of the form
 */
record OfferReadings(FieldChecks checks) {

    Optional<Entered> pressure(String path, EnteredField field) {
        return checks.within(
                path,
                checks.positive(path, checks.required(path, field, PressureUnit.class)),
                typed -> PossibleRange.GAUGE_PRESSURE.contains(
                        GaugePressure.of(typed).pascals()),
                "range.GAUGE_PRESSURE");
    }

    Optional<Entered> station(String path, EnteredField field) {
        return checks.within(
                path,
                checks.required(path, field, PressureUnit.class),
                typed -> PossibleRange.BAROMETER.contains(
                        AbsolutePressure.of(typed).pascals()),
                "range.BAROMETER");
    }

    Optional<Entered> temperature(String path, EnteredField field) {
        return checks.within(
                path,
                checks.required(path, field, TemperatureUnit.class),
                typed -> PossibleRange.INTAKE_TEMPERATURE.contains(
                        Temperature.of(typed).kelvin()),
                "range.INTAKE_TEMPERATURE");
    }

    Optional<Entered> humidity(String path, EnteredField field) {
        return checks.within(
                path,
                checks.required(path, field, FixedUnit.PERCENT),
                typed -> RelativeHumidity.of(typed).fraction() <= 1,
                "test.humidity");
    }
}
