package plantair.pumpup;

import java.util.ArrayList;
import java.util.List;
import plantair.quantity.Elapsed;
import plantair.quantity.GaugePressure;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;

/**
 * Readings as they would be if one thing were different.
 *
 * @param readings as they are
 */
record ChangedReadings(PumpUpReadings readings) {

    /** The pressure that ends a run for the flow. */
    GaugePressure end(RunReadings run) {
        return isSettled() && run.settled() != null ? run.settled() : run.stop();
    }

    private boolean isSettled() {
        return readings.airTemperature() == AirTemperature.SETTLED;
    }

    /** With so much more net volume; less when below zero. */
    PumpUpReadings volume(double by) {
        var kind = by < 0 ? VolumePart.Kind.WATER : VolumePart.Kind.PIPE;
        List<VolumePart> parts = new ArrayList<>(readings.volumeParts());
        parts.add(new VolumePart("", kind, new VesselVolume(Math.abs(by))));
        return with(parts, readings.airTemperature(), readings.runs());
    }

    /** The pressure and air at the end of every run, and its time, each more by so much. */
    PumpUpReadings ends(double pascals, double kelvins, double seconds) {
        return with(
                readings.volumeParts(),
                readings.airTemperature(),
                readings.runs().stream()
                        .map(run -> changed(run, pascals, kelvins, seconds))
                        .toList());
    }

    private RunReadings changed(RunReadings run, double pascals, double kelvins, double seconds) {
        var end = new GaugePressure(end(run).pascals() + pascals);
        Temperature stopAir = run.stopAir();
        Temperature settledAir = run.settledAir();
        return new RunReadings(
                run.start(),
                isSettled() ? run.stop() : end,
                new Elapsed(run.elapsed().seconds() + seconds),
                run.startAir(),
                stopAir == null ? null : new Temperature(stopAir.kelvin() + kelvins),
                isSettled() ? end : run.settled(),
                settledAir == null ? null : new Temperature(settledAir.kelvin() + kelvins));
    }

    /** With air as cool as the intake at every start, and so much above it at every stop. */
    PumpUpReadings aboveIntake(double kelvins) {
        Temperature intake = readings.intakeTemperature();
        var atStop = new Temperature(intake.kelvin() + kelvins);
        return with(
                readings.volumeParts(),
                AirTemperature.MEASURED,
                readings.runs().stream().map(run -> run.withAir(intake, atStop)).toList());
    }

    private PumpUpReadings with(List<VolumePart> parts, AirTemperature air, List<RunReadings> runs) {
        return new PumpUpReadings(
                parts,
                readings.station(),
                readings.intakeTemperature(),
                readings.humidityRead(),
                air,
                runs,
                readings.speed(),
                readings.ratedSpeed(),
                readings.ratingPoints(),
                readings.allowablePressure(),
                readings.circumstances());
    }
}
