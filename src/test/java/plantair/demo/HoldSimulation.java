package plantair.demo;

import plantair.equipment.CompressorPlate;
import plantair.pumpup.StaticHold;
import plantair.quantity.DurationUnit;
import plantair.quantity.Entered;
import plantair.testrecord.TestChecks;

/** The static hold before the runs: the settled tank stands shut at the stop mark, and somebody watches the needle. */
final class HoldSimulation {

    private static final double STEP_S = 0.05;
    private static final int MINUTES = 5;

    private HoldSimulation() {}

    /**
     * What is written down.
     *
     * @param plate of the machine
     * @param flow of the machine, m³/s at the intake
     * @param leak air lost at the stop mark as a part of that flow
     * @param volume true volume, m³
     */
    static TestChecks watch(
            Machine machine,
            Gauge gauge,
            Weather weather,
            CompressorPlate plate,
            double flow,
            double leak,
            double volume) {
        double stop = gauge.pascals(machine.stop()) + weather.pascals();
        var tank = new Tank(volume, weather, stop, weather.kelvin());
        for (int i = 0; i < MINUTES * 60 / STEP_S; i++) {
            double lost = leak * flow * weather.dryDensity() * tank.pressure() / stop;
            tank.step(STEP_S, 0, weather.kelvin(), lost);
        }
        return new TestChecks(
                gauge.mark(machine.stop()),
                gauge.read(tank.pressure() - weather.pascals()),
                new Entered(Integer.toString(MINUTES), DurationUnit.MINUTE),
                StaticHold.Place.TEST_VOLUME,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                plate.motorPower(),
                plate.motorPhases(),
                plate.displacement(),
                plate.control());
    }
}
