package plantair.transfer;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.equipment.Compressor;
import plantair.equipment.CompressorPlate;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.PossibleRange;
import plantair.pumpup.StaticHold;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.DurationUnit;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.PowerUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.ShaftSpeed;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.VolumeUnit;
import plantair.site.SiteFacts;
import plantair.testrecord.TestChecks;
import plantair.testrecord.TestConditions;

/** Reads what stands once in a test of a log: conditions and checks. */
final class TestCells {

    private final Cells cells;

    TestCells(Cells cells) {
        this.cells = cells;
    }

    /** How the receiver air was treated: as the log says, else as the readings it has. */
    Optional<AirTemperature> air() {
        Optional<AirTemperature> said =
                cells.checks().optionalChoice("air_temperature", cells.cell("air_temperature"), AirTemperature.class);
        if (said.isPresent() || !cells.cell("air_temperature").isEmpty()) {
            return said;
        }
        if (!cells.cell("settled_pressure").isEmpty()) {
            return Optional.of(AirTemperature.SETTLED);
        }
        boolean read =
                !cells.cell("start_air").isEmpty() || !cells.cell("stop_air").isEmpty();
        return Optional.of(read ? AirTemperature.MEASURED : AirTemperature.NOT_MEASURED);
    }

    /** The conditions; empty when something was refused. */
    Optional<TestConditions> conditions(Optional<AirTemperature> air, Optional<Compressor> compressor) {
        Optional<Entered> barometer = cells.possible(
                "barometer",
                cells.reading("barometer", PressureUnit.class, false),
                PossibleRange.BAROMETER,
                entered -> AbsolutePressure.of(entered).pascals());
        Optional<Entered> intake = cells.possible(
                "intake_temperature",
                cells.reading("intake_temperature", TemperatureUnit.class, true),
                PossibleRange.INTAKE_TEMPERATURE,
                entered -> Temperature.of(entered).kelvin());
        Optional<Entered> humidity = cells.reading("intake_humidity", FixedUnit.PERCENT);
        if (humidity.isPresent()
                && !(humidity.get().value() >= 0 && humidity.get().value() <= 100)) {
            cells.reject("intake_humidity", "test.humidity");
        }
        Optional<Entered> water = cells.checks().positive("water", cells.reading("water", VolumeUnit.class, false));
        Optional<Entered> speed = cells.possible(
                "speed",
                positive("speed", FixedUnit.RPM),
                PossibleRange.SPEED,
                entered -> ShaftSpeed.of(entered).perMinute());
        if (air.isEmpty() || intake.isEmpty() || compressor.isEmpty()) {
            return Optional.empty();
        }
        SiteFacts site = compressor.get().site().facts();
        return Optional.of(new TestConditions(
                site.elevation(),
                site.barometer(),
                barometer.orElse(null),
                intake.get(),
                humidity.orElse(null),
                air.get(),
                water.orElse(null),
                speed.orElse(null),
                compressor.get().plate().ratedSpeed()));
    }

    /** What was checked around the runs, beside what the plate says now. */
    TestChecks checks(CompressorPlate plate) {
        Optional<Entered> start = pressure("hold_start");
        Optional<Entered> end = pressure("hold_end");
        Optional<Entered> waited = cells.possible(
                "hold_wait",
                cells.checks().positive("hold_wait", cells.reading("hold_wait", DurationUnit.class, false)),
                PossibleRange.ELAPSED,
                entered -> Elapsed.of(entered).seconds());
        boolean some = start.isPresent() || end.isPresent() || waited.isPresent();
        if (some && !(start.isPresent() && end.isPresent() && waited.isPresent()) && cells.isSound()) {
            cells.reject("hold_start", "test.holdIncomplete");
        }
        return new TestChecks(
                start.orElse(null),
                end.orElse(null),
                waited.orElse(null),
                cells.checks()
                        .optionalChoice("hold_place", cells.cell("hold_place"), StaticHold.Place.class)
                        .orElse(null),
                cells.answer("others_off").orElse(null),
                cells.answer("speed_held").orElse(null),
                cells.checks()
                        .positive("input_power", cells.reading("input_power", PowerUnit.class, false))
                        .orElse(null),
                positive("voltage", FixedUnit.VOLT).orElse(null),
                positive("motor_current", FixedUnit.AMPERE).orElse(null),
                percent("power_factor"),
                percent("motor_efficiency"),
                plate.motorPower(),
                plate.motorPhases(),
                plate.displacement(),
                plate.control());
    }

    private Optional<Entered> pressure(String column) {
        return cells.possible(
                column,
                cells.reading(column, PressureUnit.class, false),
                PossibleRange.GAUGE_PRESSURE,
                entered -> GaugePressure.of(entered).pascals());
    }

    private Optional<Entered> positive(String column, FixedUnit unit) {
        return cells.checks().positive(column, cells.reading(column, unit));
    }

    private @Nullable Entered percent(String column) {
        Optional<Entered> entered = positive(column, FixedUnit.PERCENT);
        if (entered.isPresent() && entered.get().part() > 1) {
            cells.reject(column, "test.percent", entered.get());
        }
        return entered.orElse(null);
    }
}
