package plantair.leak;

import java.util.Optional;
import plantair.pumpup.StaticHold;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.PressureDifference;
import plantair.quantity.VesselVolume;

/**
 * A fall of pressure known by its first and last reading.
 *
 * @param station barometric pressure of the place
 * @param first gauge pressure at first
 * @param last gauge pressure at last
 * @param waited time between them
 */
public record TwoReadings(AbsolutePressure station, GaugePressure first, GaugePressure last, Elapsed waited) {

    /**
     * The factor of the guide of the US Department of Energy for a pressure that fell to about one half: it brings the mean loss
     * up to normal pressure. From memory; its role read in a copy. Right for that fall only (S7).
     */
    public static final double GUIDE_FACTOR = 1.25;

    private static final double LEAST_PART = 0.4;
    private static final double MOST_PART = 0.6;

    /** @throws IllegalArgumentException when a pressure is at vacuum or below */
    public TwoReadings {
        first.above(station);
        last.above(station);
    }

    /**
     * Standard uncertainty of one reading, Pa: half the smallest step that can be read, all alike likely (M20).
     *
     * @param division that step, above zero
     */
    public static double readingU(PressureDifference division) {
        return division.pascals() / 2 / StrictMath.sqrt(3);
    }

    /**
     * k = ln(P1/P2)/t (S6).
     *
     * @param readingU standard uncertainty of one reading, Pa, zero or more
     */
    public Decay decay(double readingU) {
        double from = first.above(station).pascals();
        double to = last.above(station).pascals();
        double u = readingU * StrictMath.sqrt(1 / (from * from) + 1 / (to * to)) / waited.seconds();
        return Decay.settled(StrictMath.log(from / to) / waited.seconds(), u, waited.seconds());
    }

    /** Mean loss between the readings, free air (S7): V (p1 − p2)/(Pa t). It belongs to a pressure between them. */
    public FlowRate meanLoss(VesselVolume volume) {
        double fall = first.minus(last).pascals();
        return new FlowRate(volume.cubicMetres() * fall / (station.pascals() * waited.seconds()));
    }

    /**
     * The mean loss with its uncertainty (S7): that of both readings, of half a kelvin of cooling nobody saw, and of the
     * volume.
     *
     * @param readingU standard uncertainty of one reading, Pa, zero or more
     */
    public MeasuredFlow meanLoss(ShutAir shut, double readingU) {
        double mean = (first.above(station).pascals() + last.above(station).pascals()) / 2;
        double byReadings = StrictMath.sqrt(2) * readingU;
        double fall = StrictMath.hypot(byReadings, Decay.COOLING * mean);
        FlowRate loss = meanLoss(shut.volume());
        double u = shut.volume().cubicMetres() * fall / (station.pascals() * waited.seconds());
        double byVolume = shut.relativeU() * loss.cubicMetresPerSecond();
        return new MeasuredFlow(loss, new FlowRate(StrictMath.hypot(u, byVolume)), FlowBasis.INTAKE);
    }

    /** The leak by the guide with the uncertainty of the mean loss; empty as without it. */
    public Optional<MeasuredFlow> byGuide(ShutAir shut, double readingU) {
        return byGuide(shut.volume()).map(flow -> {
            FlowRate u = meanLoss(shut, readingU).standardUncertainty();
            return new MeasuredFlow(flow, u.times(GUIDE_FACTOR), FlowBasis.INTAKE);
        });
    }

    /**
     * The leak by the guide (S7): {@link #GUIDE_FACTOR} times the mean loss, told for the first pressure.
     *
     * @return empty where the gauge pressure did not fall to between 0.4 and 0.6 of the first, since the factor is wrong then;
     *     the bounds are ours
     */
    public Optional<FlowRate> byGuide(VesselVolume volume) {
        double part = last.pascals() / first.pascals();
        return first.pascals() > 0 && part >= LEAST_PART && part <= MOST_PART
                ? Optional.of(meanLoss(volume).times(GUIDE_FACTOR))
                : Optional.empty();
    }

    /**
     * What brings the mean loss up to the first pressure where the loss is in proportion to the absolute pressure (S7):
     * P1 ln(P1/P2)/(P1 − P2); 1.31 from 100 to 50 psig, 1.05 from 100 to 90.
     *
     * @throws IllegalArgumentException when the pressure did not fall
     */
    public double exactFactor() {
        double from = first.above(station).pascals();
        double to = last.above(station).pascals();
        if (!(from > to)) {
            throw new IllegalArgumentException("pressure must have fallen: " + first + ", " + last);
        }
        return from * StrictMath.log(from / to) / (from - to);
    }

    /** Whether the holes were choked to the end, so that S6 holds. */
    public boolean isChoked() {
        return Decay.isChokedAt(last, station);
    }

    /**
     * The same as a hold of the volume of a pump-up test, which adds the leak to the flow (M10) unless the air goes back
     * through the machine's own check valve.
     *
     * @param place where the air goes
     */
    public StaticHold asHold(StaticHold.Place place) {
        return new StaticHold(first, last, waited, place);
    }
}
