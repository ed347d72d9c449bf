package plantair.planner.web;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import plantair.equipment.Compressor;
import plantair.pumpup.GaugeAccuracy;
import plantair.pumpup.Instruments;
import plantair.pumpup.Intake;
import plantair.pumpup.PlanSetup;
import plantair.pumpup.PossibleRange;
import plantair.pumpup.Station;
import plantair.pumpup.VolumePart;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;
import plantair.quantity.PressureUnit;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.VesselVolume;
import plantair.site.SiteFacts;
import plantair.web.EnteredField;
import plantair.web.FieldChecks;
import plantair.web.UnitSet;

/** Reads the form of a plan: all is understood and possible, or each that is not has a message beside it. */
@Component
final class PlanReader {

    private static final double MOST_PERCENT = 20;
    private static final Temperature USUAL_INTAKE = Temperature.of(20, TemperatureUnit.CELSIUS);
    private static final RelativeHumidity USUAL_HUMIDITY = new RelativeHumidity(0.5);

    private final PlanVolumes volumes;

    PlanReader(PlanVolumes volumes) {
        this.volumes = volumes;
    }

    Optional<PlanSetup> read(PlanForm form, Compressor compressor, UnitSet units, Errors errors) {
        var checks = new FieldChecks(errors);
        Optional<Entered> flow = checks.positive("flow", checks.required("flow", form.getFlow(), FlowUnit.class));
        Optional<Entered> stop = pressure("stop", form.getStop(), checks, errors);
        Optional<VesselVolume> volume = volumes.read(form, compressor.site().id(), stop, errors);
        Optional<GaugeAccuracy> gauge = gauge(form, checks, errors);
        if (errors.hasErrors() || flow.isEmpty() || stop.isEmpty() || volume.isEmpty() || gauge.isEmpty()) {
            return Optional.empty();
        }
        var usual = Instruments.UNNAMED;
        return Optional.of(new PlanSetup(
                volume.get(),
                VolumePart.PLATE_U,
                new Instruments(gauge.get(), usual.clockU(), usual.thermometerU(), usual.barometerU()),
                FlowRate.of(flow.get()),
                GaugePressure.of(stop.get()),
                step(units),
                intake(compressor.site().facts())));
    }

    private static Optional<GaugeAccuracy> gauge(PlanForm form, FieldChecks checks, Errors errors) {
        Optional<Entered> span = pressure("span", form.getSpan(), checks, errors);
        Optional<Entered> division = pressure("division", form.getDivision(), checks, errors);
        Optional<Entered> limit =
                checks.positive("limit", checks.required("limit", form.getLimit(), FixedUnit.PERCENT));
        if (limit.isPresent() && limit.get().value() > MOST_PERCENT) {
            reject("limit", "plan.limitTooMuch", limit.get(), errors);
            return Optional.empty();
        }
        if (span.isEmpty() || division.isEmpty() || limit.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new GaugeAccuracy(
                PressureDifference.of(span.get()),
                RelativeHumidity.of(limit.get()).fraction(),
                PressureDifference.of(division.get()),
                List.of()));
    }

    private static Optional<Entered> pressure(String path, EnteredField field, FieldChecks checks, Errors errors) {
        Optional<Entered> typed = checks.positive(path, checks.required(path, field, PressureUnit.class));
        if (typed.isPresent() && !isPossible(typed.get())) {
            reject(path, "range.GAUGE_PRESSURE", typed.get(), errors);
            return Optional.empty();
        }
        return typed;
    }

    private static boolean isPossible(Entered typed) {
        return PossibleRange.GAUGE_PRESSURE.contains(
                PressureDifference.of(typed).pascals());
    }

    private static void reject(String path, String code, Entered typed, Errors errors) {
        errors.rejectValue(path + ".number", code, new Object[] {typed.toString()}, null);
    }

    /** Between start pressures, as a gauge is marked in this unit. */
    private static PressureDifference step(UnitSet units) {
        return switch (units.pressure()) {
            case PSI -> PressureDifference.of(10, PressureUnit.PSI);
            case KPA -> PressureDifference.of(100, PressureUnit.KPA);
            default -> PressureDifference.of(1, units.pressure());
        };
    }

    private static Intake intake(SiteFacts site) {
        var station = new Station(
                null, site.normalBarometer().orElse(null), site.height().orElse(null));
        return new Intake(station.pressure(), USUAL_INTAKE, USUAL_HUMIDITY);
    }
}
