package plantair.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;

/** Wall figures against cases worked by hand; each is an own case, the rule from memory of API 510. */
class WallReferenceTests {

    private static final LocalDate NOW = LocalDate.of(2026, 6, 15);
    private static final Length REQUIRED = inch(0.215);

    private static Length inch(double value) {
        return Length.of(value, LengthUnit.INCH);
    }

    private static WallReading read(LocalDate day, double thickness, double error) {
        return new WallReading(day, inch(thickness), inch(error));
    }

    private static WallReading read(LocalDate day, double thickness) {
        return new WallReading(day, inch(thickness), null);
    }

    private static double inches(double metres) {
        return new Length(metres).in(LengthUnit.INCH);
    }

    /** Own case: 0.240 − 0.232 = 0.008 in over 4 years; (0.232 − 0.215)/0.002 = 8.5 years, half 4.25. */
    @Test
    void agreesWithTheCaseWorkedByHand() {
        var place = new WallPlace(List.of(read(NOW.minusYears(4), 0.240), read(NOW, 0.232)), REQUIRED);

        assertThat(place.code()).isEqualTo(WallCode.THINNING);
        assertThat(inches(place.loss().orElseThrow().rate())).isCloseTo(0.002, within(1e-12));
        RemainingLife life = place.life().orElseThrow();
        assertThat(life.years()).isCloseTo(8.5, within(1e-9));
        assertThat(life.half()).isCloseTo(4.25, within(1e-9));
        assertThat(life.longestInterval()).isEqualTo(life.half());
        assertThat(life.u()).isEmpty();
    }

    /**
     * Own case, the same with limits ± 0.001 in: u = 0.00057735 in each, u(lost) = 0.00081650 in; u(life) =
     * 0.00057735 · √(1562.5² + 1062.5²) = 1.0909 years.
     */
    @Test
    void carriesTheErrorOfTheInstrumentThrough() {
        var place = new WallPlace(List.of(read(NOW.minusYears(4), 0.240, 0.001), read(NOW, 0.232, 0.001)), REQUIRED);

        WallLoss loss = place.loss().orElseThrow();
        assertThat(inches(loss.uLost().orElseThrow())).isCloseTo(0.00081650, within(5e-9));
        assertThat(inches(loss.uRate().orElseThrow())).isCloseTo(0.00020412, within(5e-9));
        assertThat(place.life().orElseThrow().u().orElseThrow()).isCloseTo(1.0909, within(5e-5));
    }

    /** The sensitivities against differences of the function itself. */
    @Test
    void propagatesAsDifferencesDo() {
        double a = 0.0005;
        double step = 1e-7;
        var sure = life(0.240, 0.232, a);
        double byFirst = (life(0.240 + step, 0.232, a).years() - sure.years()) / step;
        double byLast = (life(0.240, 0.232 + step, a).years() - sure.years()) / step;

        assertThat(sure.u().orElseThrow()).isCloseTo(Math.hypot(byFirst, byLast) * a / Math.sqrt(3), within(1e-4));
    }

    private static RemainingLife life(double first, double last, double error) {
        return new WallPlace(List.of(read(NOW.minusYears(4), first, error), read(NOW, last, error)), REQUIRED)
                .life()
                .orElseThrow();
    }

    @Test
    void tellsNoLossSmallerThanItsUncertainty() {
        // 2 u(lost) = 2 · √2 · 0.005/√3 = 0.008165 in: 0.008 in cannot be told, 0.0083 in can
        var unsure = new WallPlace(List.of(read(NOW.minusYears(4), 0.240, 0.005), read(NOW, 0.232, 0.005)), REQUIRED);
        var sure = new WallPlace(List.of(read(NOW.minusYears(4), 0.2403, 0.005), read(NOW, 0.232, 0.005)), REQUIRED);

        assertThat(unsure.code()).isEqualTo(WallCode.NO_LOSS_TOLD);
        assertThat(unsure.life()).isEmpty();
        assertThat(sure.code()).isEqualTo(WallCode.THINNING);
    }

    @Test
    void callsAWallThatGrewDoubtful() {
        var grown = new WallPlace(List.of(read(NOW.minusYears(1), 0.232, 0.001), read(NOW, 0.240, 0.001)), REQUIRED);
        var grownALittle =
                new WallPlace(List.of(read(NOW.minusYears(1), 0.232, 0.001), read(NOW, 0.233, 0.001)), REQUIRED);

        assertThat(grown.code()).isEqualTo(WallCode.THICKER);
        assertThat(grown.life()).isEmpty();
        assertThat(grownALittle.code()).isEqualTo(WallCode.NO_LOSS_TOLD);
    }

    @Test
    void takesTheFasterOfRecentAndWholeLoss() {
        var faster = new WallPlace(
                List.of(read(NOW, 0.230), read(NOW.minusYears(8), 0.250), read(NOW.minusYears(4), 0.248)), REQUIRED);
        var slower = new WallPlace(
                List.of(read(NOW.minusYears(8), 0.250), read(NOW.minusYears(4), 0.232), read(NOW, 0.230)), REQUIRED);

        assertThat(inches(faster.loss().orElseThrow().rate())).isCloseTo(0.018 / 4, within(1e-12));
        assertThat(inches(slower.loss().orElseThrow().rate())).isCloseTo(0.020 / 8, within(1e-12));
    }

    @Test
    void leavesNothingBelowTheRequiredThickness() {
        var below = new WallPlace(List.of(read(NOW.minusYears(4), 0.240), read(NOW, 0.214)), REQUIRED);

        assertThat(below.isBelowRequired()).isTrue();
        assertThat(below.life().orElseThrow().years()).isZero();
        assertThat(new WallPlace(List.of(read(NOW, 0.215)), REQUIRED).isBelowRequired())
                .isFalse();
    }

    @Test
    void looksAgainAfterTenYearsAtTheLatest() {
        var slow = new WallPlace(List.of(read(NOW.minusYears(4), 0.2404), read(NOW, 0.240)), REQUIRED);

        assertThat(slow.life().orElseThrow().half()).isGreaterThan(10);
        assertThat(slow.life().orElseThrow().longestInterval()).isEqualTo(10);
    }

    @Test
    void findsTheLeastLifeOfAllPlaces() {
        var slow = new WallPlace(List.of(read(NOW.minusYears(4), 0.240), read(NOW, 0.239)), REQUIRED);
        var fast = new WallPlace(List.of(read(NOW.minusYears(4), 0.240), read(NOW, 0.232)), REQUIRED);
        var one = new WallPlace(List.of(read(NOW, 0.220)), REQUIRED);
        var unknown = new WallPlace(fast.readings(), null);

        assertThat(WallPlace.least(List.of(slow, one, fast, unknown))).isEqualTo(fast.life());
        assertThat(WallPlace.least(List.of(one, unknown))).isEmpty();
        assertThat(one.code()).isEqualTo(WallCode.ONE_READING);
    }

    @Test
    void refusesWhatCannotBe() {
        WallReading now = read(NOW, 0.232);

        assertThatThrownBy(() -> new WallLoss(now, now)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new WallPlace(List.of(), REQUIRED)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new WallPlace(List.of(now, now), REQUIRED))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> read(NOW, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> read(NOW, 0.2, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RemainingLife.of(new WallLoss(read(NOW.minusYears(1), 0.3), now), new Length(0)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RemainingLife.of(new WallLoss(read(NOW.minusYears(1), 0.2), now), REQUIRED))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
