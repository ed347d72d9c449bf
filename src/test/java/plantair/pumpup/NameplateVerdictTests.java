package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static plantair.pumpup.NameplateVerdict.Verdict.CANNOT_BE_TOLD;
import static plantair.pumpup.NameplateVerdict.Verdict.DOES_NOT_MEET;
import static plantair.pumpup.NameplateVerdict.Verdict.MEETS;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.pumpup.NameplateVerdict.Verdict;
import plantair.pumpup.Uncertainty.Component;
import plantair.pumpup.Uncertainty.Source;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.PressureDifference;

/** Conformity by JCGM 106:2012, 7.3 (from memory): the part of the distribution that lies above the limit. */
class NameplateVerdictTests {

    private static NameplateVerdict verdict(double litresAMinute, double rated, double u) {
        var rating = new RatingComparison(
                FlowBasis.INTAKE,
                FlowRate.of(rated, FlowUnit.LITRE_PER_MINUTE),
                FlowRate.of(litresAMinute, FlowUnit.LITRE_PER_MINUTE),
                litresAMinute / rated,
                RatingComparison.Reach.ONE_POINT,
                new PressureDifference(0));
        return NameplateVerdict.of(rating, uncertainty(u));
    }

    private static Uncertainty uncertainty(double u) {
        return new Uncertainty(List.of(new Component(Source.OPERATION, u, null)));
    }

    /** 388.6 L/min, 3.5 %. The limit is the rating less 7 %. Own figures from the normal distribution, another program. */
    @ParameterizedTest
    @CsvSource({"380, 0.73641, CANNOT_BE_TOLD", "360, 0.98226, MEETS", "420, 0.01048, DOES_NOT_MEET"})
    void saysHowLikelyTheMachineMeetsItsRating(double limit, double probability, Verdict expected) {
        NameplateVerdict verdict = verdict(388.6, limit / 0.93, 0.035);

        assertThat(verdict.tolerance()).isEqualTo(0.07);
        assertThat(verdict.probability()).isCloseTo(probability, within(5e-6));
        assertThat(verdict.verdict()).isEqualTo(expected);
    }

    /** 1.645 standard uncertainties are the border on both sides; rated 400, so the limit is 372. */
    @ParameterizedTest
    @CsvSource({"1.646, MEETS", "1.644, CANNOT_BE_TOLD", "-1.644, CANNOT_BE_TOLD", "-1.646, DOES_NOT_MEET"})
    void changesItsVerdictAtOneInTwenty(double score, Verdict expected) {
        double u = 0.03;
        double flow = 372 / (1 - score * u);

        assertThat(verdict(flow, 400, u).verdict()).isEqualTo(expected);
    }

    /** With the uncertainty that it names, the verdict is settled; with a little more it is not. */
    @ParameterizedTest
    @CsvSource({"380", "390", "360", "350"})
    void namesTheUncertaintyThatWouldSettleIt(double flow) {
        NameplateVerdict open = verdict(flow, 400, 0.2);

        assertThat(open.verdict()).isEqualTo(CANNOT_BE_TOLD);
        assertThat(open.settledBy()).isCloseTo(Math.abs(flow - 372) / flow / 1.6448536, withinPercentage(1e-4));
        assertThat(verdict(flow, 400, 0.999 * open.settledBy()).verdict())
                .isEqualTo(flow > 372 ? MEETS : DOES_NOT_MEET);
        assertThat(verdict(flow, 400, 1.001 * open.settledBy()).verdict()).isEqualTo(CANNOT_BE_TOLD);
    }

    @Test
    void settlesNothingAtTheLimitItself() {
        NameplateVerdict verdict = verdict(372, 400, 0.03);

        assertThat(verdict.probability()).isCloseTo(0.5, within(1e-9));
        assertThat(verdict.settledBy()).isCloseTo(0, within(1e-9));
    }

    /** One good test is put beside its rating with everything that both tests share. */
    @Test
    void takesTheWholeUncertaintyOfATest() {
        PumpUpResult result = SampleReadings.good().result();

        assertThat(result.verdict())
                .isEqualTo(NameplateVerdict.of(
                        result.rating(), uncertainty(result.uncertainty().combined())));
        assertThat(result.verdict().verdict()).isEqualTo(MEETS);
        assertThat(SampleReadings.good().noRatings().result().verdict()).isNull();
    }
}
