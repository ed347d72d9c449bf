package plantair.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import plantair.quantity.Entered;

class AccuracyGradeTests {

    /** ASME B40.100 and EN 837-1, from memory; the largest part of a grade with three. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            ASME_4A, 0.1
            ASME_3A, 0.25
            ASME_2A, 0.5
            ASME_1A, 1
            ASME_A,  2
            ASME_B,  3
            ASME_C,  4
            ASME_D,  5
            EN_0_1,  0.1
            EN_0_25, 0.25
            EN_0_6,  0.6
            EN_1,    1
            EN_1_6,  1.6
            EN_2_5,  2.5
            EN_4,    4""")
    void givesTheLargestErrorOfAGrade(AccuracyGrade grade, double percent) {
        assertThat(facts(grade, null).limitPart().orElseThrow()).isEqualTo(percent / 100);
    }

    @Test
    void takesATypedPercentOutsideTheGrades() {
        assertThat(facts(AccuracyGrade.OTHER, Entered.parse("3.5 %"))
                        .limitPart()
                        .orElseThrow())
                .isEqualTo(0.035);
    }

    @Test
    void knowsNoPartOfSpanWithoutAGrade() {
        assertThat(facts(null, null).limitPart()).isEmpty();
    }

    /** So that a constant added later gets its number. */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "OTHER")
    void hasALimitForEveryGrade(AccuracyGrade grade) {
        assertThat(grade.percent().part()).isBetween(0.001, 0.05);
        assertThat(Stream.of("ASME_", "EN_")).anyMatch(source -> grade.name().startsWith(source));
    }

    private static InstrumentFacts facts(AccuracyGrade grade, Entered percent) {
        return new InstrumentFacts(
                "G", InstrumentKind.GAUGE, null, "", "", null, grade, percent, null, null, null, "", true);
    }
}
