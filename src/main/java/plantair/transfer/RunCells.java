package plantair.transfer;

import java.util.Optional;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.PossibleRange;
import plantair.quantity.DurationUnit;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.testrecord.RunEntry;

/** Reads one run of a log. */
final class RunCells {

    private final Cells cells;

    RunCells(Cells cells) {
        this.cells = cells;
    }

    /** The run; empty when something was refused. */
    Optional<RunEntry> read(Optional<AirTemperature> air) {
        boolean measured = air.equals(Optional.of(AirTemperature.MEASURED));
        boolean settled = air.equals(Optional.of(AirTemperature.SETTLED));
        Optional<Entered> start = pressure("start_pressure", true);
        Optional<Entered> stop = pressure("stop_pressure", true);
        Optional<Entered> elapsed = time("elapsed", true);
        Optional<Entered> startAir = air("start_air", measured);
        Optional<Entered> stopAir = air("stop_air", measured);
        Optional<Entered> settledPressure = pressure("settled_pressure", settled);
        Optional<Entered> settledAir = air("settled_air", settled);
        Optional<Entered> settledWait = time("settled_wait", false);
        above("stop_pressure", stop, start, "test.stopNotAboveStart");
        above("settled_pressure", settledPressure, start, "test.settledNotAboveStart");
        if (!cells.isSound()) {
            return Optional.empty();
        }
        return Optional.of(new RunEntry(
                start.orElseThrow(),
                stop.orElseThrow(),
                elapsed.orElseThrow(),
                startAir.orElse(null),
                stopAir.orElse(null),
                settledPressure.orElse(null),
                settledAir.orElse(null),
                settledWait.orElse(null)));
    }

    private Optional<Entered> pressure(String column, boolean required) {
        return cells.possible(
                column,
                cells.reading(column, PressureUnit.class, required),
                PossibleRange.GAUGE_PRESSURE,
                entered -> GaugePressure.of(entered).pascals());
    }

    private Optional<Entered> time(String column, boolean required) {
        return cells.possible(
                column,
                cells.checks().positive(column, cells.reading(column, DurationUnit.class, required)),
                PossibleRange.ELAPSED,
                entered -> Elapsed.of(entered).seconds());
    }

    private Optional<Entered> air(String column, boolean required) {
        return cells.possible(
                column,
                cells.reading(column, TemperatureUnit.class, required),
                PossibleRange.RECEIVER_AIR,
                entered -> Temperature.of(entered).kelvin());
    }

    private void above(String column, Optional<Entered> upper, Optional<Entered> lower, String code) {
        if (upper.isPresent()
                && lower.isPresent()
                && !(GaugePressure.of(upper.get()).pascals()
                        > GaugePressure.of(lower.get()).pascals())) {
            cells.reject(column, code, upper.get(), lower.get());
        }
    }
}
