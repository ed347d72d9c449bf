package plantair.leak;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static plantair.quantity.PressureUnit.BAR;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import plantair.pumpup.StaticHold;
import plantair.pumpup.TimedPressure;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.GaugePressure;

class FittedFallTests {

    private static final AbsolutePressure STATION = AbsolutePressure.of(1, BAR);

    /** Readings every 30 s, absolute pressure in bar from a function of their number, with a small wave. */
    private static List<TimedPressure> fall(int n, IntToDoubleFunction absolute) {
        return IntStream.range(0, n)
                .mapToObj(i -> new TimedPressure(
                        30.0 * i, GaugePressure.of(absolute.applyAsDouble(i) - 1 + 0.001 * Math.sin(5.0 * i), BAR)))
                .toList();
    }

    private static IntToDoubleFunction leak(double k) {
        return i -> 9 * Math.exp(-k * 30 * i);
    }

    private static List<LeakCode> codes(FittedFall.Outcome outcome) {
        return outcome.findings().stream().map(LeakFinding::code).toList();
    }

    @Test
    void findsAnExactFall() {
        List<TimedPressure> exact = IntStream.range(0, 20)
                .mapToObj(i ->
                        new TimedPressure(30.0 * i, GaugePressure.of(leak(2e-4).applyAsDouble(i) - 1, BAR)))
                .toList();

        FittedFall fall = FittedFall.of(exact, STATION, 0).fall().orElseThrow();

        assertThat(fall.decay().perSecond()).isCloseTo(2e-4, withinPercentage(1e-8));
        assertThat(fall.first().in(BAR)).isCloseTo(8, within(1e-9));
        assertThat(fall.last().in(BAR)).isCloseTo(leak(2e-4).applyAsDouble(19) - 1, within(1e-9));
        assertThat(fall.waited()).isEqualTo(new Elapsed(570));
        assertThat(fall.findings()).isEmpty();
        assertThat(fall.isSound()).isTrue();
    }

    /** Half a kelvin of 293 K in 570 s: 2.994e-6 1/s, by hand. */
    @Test
    void allowsForAirThatCoolsUnseen() {
        FittedFall fall = FittedFall.of(fall(20, leak(2e-4)), STATION, 0).fall().orElseThrow();

        assertThat(fall.decay().u()).isCloseTo(Math.hypot(fall.scatterU(), 2.9938e-6), within(1e-9));
    }

    /** No leak, but air that cools by 10 K with a time constant of 120 s. */
    @Test
    void tellsCoolingAirFromALeak() {
        List<TimedPressure> cooling = fall(30, i -> 9 * (293 + 10 * Math.exp(-30.0 * i / 120)) / 303);

        FittedFall.Outcome early = FittedFall.of(cooling, STATION, 0);
        FittedFall.Outcome late = FittedFall.of(cooling, STATION, FittedFall.SETTLING_S);

        assertThat(codes(early)).contains(LeakCode.STILL_SETTLING);
        assertThat(early.fall().orElseThrow().asHold(StaticHold.Place.TEST_VOLUME))
                .isEmpty();
        assertThat(late.findings()).contains(new LeakFinding(LeakCode.LEFT_EARLY, 10));
        assertThat(late.fall().orElseThrow().isSound()).isFalse();
    }

    @Test
    void seesALeakThatGrows() {
        assertThat(codes(FittedFall.of(fall(20, i -> 9 - 0.002 * i * i), STATION, 0)))
                .contains(LeakCode.LEAK_GROWS);
    }

    @Test
    void tellsNoLeakFromReadingsThatStand() {
        FittedFall.Outcome still = FittedFall.of(fall(20, leak(1e-7)), STATION, 0);

        assertThat(codes(still)).containsExactly(LeakCode.NO_LEAK_TOLD);
        assertThat(still.fall().orElseThrow().asHold(StaticHold.Place.TEST_VOLUME))
                .isEmpty();
    }

    @Test
    void seesARise() {
        FittedFall.Outcome rise = FittedFall.of(fall(20, leak(-2e-4)), STATION, 0);

        assertThat(codes(rise)).contains(LeakCode.ROSE);
        assertThat(rise.fall().orElseThrow().asHold(StaticHold.Place.TEST_VOLUME))
                .isEmpty();
    }

    /** Choked down to 1.2^3.5 = 1.8929 times the station: 0.893 bar gauge at 1 bar, the 0.90 bar of sea level. */
    @Test
    void leavesOutWhatIsTooLow() {
        List<TimedPressure> deep = fall(100, leak(1e-3));
        long low = deep.stream()
                .filter(reading -> reading.pressure().in(BAR) < 0.8929)
                .count();

        FittedFall.Outcome outcome = FittedFall.of(deep, STATION, 0);

        assertThat(Decay.CHOKED_RATIO * 1.01325 - 1.01325).isCloseTo(0.90, within(0.005));
        assertThat(low).isPositive();
        assertThat(outcome.findings()).contains(new LeakFinding(LeakCode.LEFT_LOW, low));
        assertThat(outcome.fall().orElseThrow().decay().perSecond()).isCloseTo(1e-3, withinPercentage(0.5));
    }

    @Test
    void refusesWhatCannotBeFitted() {
        List<TimedPressure> back = new ArrayList<>(fall(20, leak(2e-4)));
        Collections.swap(back, 3, 4);
        List<TimedPressure> moment = Collections.nCopies(6, fall(1, leak(2e-4)).get(0));

        assertThat(codes(FittedFall.of(back, STATION, 0))).containsExactly(LeakCode.TIME_FALLS);
        assertThat(codes(FittedFall.of(moment, STATION, 0))).containsExactly(LeakCode.NO_TIME);
        assertThat(codes(FittedFall.of(fall(3, leak(2e-4)), STATION, 0))).containsExactly(LeakCode.FEW_READINGS);
        assertThat(FittedFall.of(fall(4, leak(2e-4)), STATION, 0).fall()).isPresent();
        assertThat(codes(FittedFall.of(List.of(), STATION, 0))).containsExactly(LeakCode.FEW_READINGS);
    }

    /** A hold made of the fit decays as the fit does. */
    @Test
    void becomesAHoldOfTheSameDecay() {
        FittedFall fall = FittedFall.of(fall(20, leak(2e-4)), STATION, 0).fall().orElseThrow();

        StaticHold hold = fall.asHold(StaticHold.Place.CHECK_VALVE).orElseThrow();

        var again = new TwoReadings(STATION, hold.start(), hold.end(), hold.waited());
        assertThat(again.decay(0).perSecond()).isCloseTo(fall.decay().perSecond(), withinPercentage(1e-8));
        assertThat(hold.place()).isEqualTo(StaticHold.Place.CHECK_VALVE);
        assertThat(again.asHold(StaticHold.Place.CHECK_VALVE)).isEqualTo(hold);
    }

    @Test
    void takesThousandsOfReadings() {
        FittedFall fall =
                FittedFall.of(fall(20_000, leak(2e-6)), STATION, 0).fall().orElseThrow();

        assertThat(fall.decay().perSecond()).isCloseTo(2e-6, withinPercentage(0.1));
    }

    /** By hand: 0.05 · √(1/10² + 1/5²)/300 = 3.7268e-5 1/s, and 0.5/(293 · 300) = 5.6883e-6 of cooling. */
    @Test
    void knowsHowSureTwoReadingsAre() {
        var fall = new TwoReadings(STATION, GaugePressure.of(9, BAR), GaugePressure.of(4, BAR), new Elapsed(300));

        assertThat(fall.decay(0.05e5).u()).isCloseTo(Math.hypot(3.7268e-5, 5.6883e-6), within(1e-9));
    }

    @Test
    void knowsNoFactorWithoutAFall() {
        var rise = new TwoReadings(STATION, GaugePressure.of(5, BAR), GaugePressure.of(6, BAR), new Elapsed(60));

        assertThatThrownBy(rise::exactFactor).isInstanceOf(IllegalArgumentException.class);
        assertThat(rise.decay(100).isRise()).isTrue();
        assertThat(rise.isChoked()).isTrue();
        assertThatThrownBy(() ->
                        new TwoReadings(STATION, GaugePressure.of(-1, BAR), GaugePressure.of(6, BAR), new Elapsed(60)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
