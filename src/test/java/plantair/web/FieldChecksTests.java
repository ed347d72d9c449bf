package plantair.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.validation.BeanPropertyBindingResult;
import plantair.quantity.DurationUnit;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.NumberProblem;
import plantair.quantity.PressureUnit;
import plantair.quantity.Unit;

class FieldChecksTests {

    private final SampleForm form = new SampleForm();
    private final BeanPropertyBindingResult errors = new BeanPropertyBindingResult(form, "form");
    private final FieldChecks checks = new FieldChecks(errors);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "7 5|number.INNER_BLANK",
                "1e999|number.EXPONENT",
                "7,05|number.COMMA",
                "1,234.5|number.COMMA",
                "12345678901|number.TOO_LONG",
                "abc|number.NOT_A_NUMBER",
                "NaN|number.NOT_A_NUMBER",
                "1:05|number.notTime",
                "''|number.MISSING",
                "'  '|number.MISSING"
            })
    void refusesWhatIsNoPressure(String typed, String code) {
        var read = pressure(typed, "[psi]");

        assertThat(read).isEmpty();
        assertThat(errors.getFieldErrorCount()).isEqualTo(1);
        assertThat(codeAt("runs[0].start.number")).isEqualTo(code);
        assertThat(errors.getFieldValue("runs[0].start.number")).isEqualTo(typed);
    }

    @Test
    void cutsTenThousandCharactersInItsMessage() {
        pressure("9".repeat(10_000), "[psi]");

        var error = errors.getFieldError("runs[0].start.number");
        assertThat(error.getCode()).isEqualTo("number.TOO_LONG");
        assertThat(error.getArguments()[0].toString()).hasSize(41);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "psi", "[degF]", "s", "m:ss", "<b>"})
    void refusesUnknownUnitsAndThoseOfAnotherQuantity(String unit) {
        assertThat(pressure("95.0", unit)).isEmpty();

        assertThat(codeAt("runs[0].start.unit")).isEqualTo("unit.unknown");
    }

    @Test
    void keepsTheDigitsAsTyped() {
        assertThat(pressure(" 95.0 ", "[psi]")).contains(new Entered("95.0", PressureUnit.PSI));

        assertThat(errors.hasErrors()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"1:02.4, s, 62.4", "1:02.4, min, 62.4", "62.4, s, 62.4", "2, min, 2"})
    void readsMinutesAndSecondsWithEitherUnit(String typed, String unit, double value) {
        var read = checks.required("runs[0].time", field(typed, unit), DurationUnit.class);

        assertThat(read.map(Entered::value)).contains(value);
        assertThat(read.get().unit() == DurationUnit.MINUTES_SECONDS).isEqualTo(typed.contains(":"));
    }

    @Test
    void refusesSecondsBeyondTheMinute() {
        assertThat(checks.required("runs[0].time", field("1:75", "s"), DurationUnit.class))
                .isEmpty();

        assertThat(codeAt("runs[0].time.number")).isEqualTo("number.NOT_MINUTES_SECONDS");
    }

    @Test
    void refusesTheColonUnitWithoutColon() {
        assertThat(checks.required("runs[0].time", field("62", "m:ss"), DurationUnit.class))
                .isEmpty();

        assertThat(codeAt("runs[0].time.unit")).isEqualTo("unit.unknown");
    }

    @Test
    void leavesOutWhatIsOptionalAndBlank() {
        assertThat(checks.optional("humidity", field("", "nonsense"), FixedUnit.PERCENT))
                .isEmpty();

        assertThat(errors.hasErrors()).isFalse();
    }

    @Test
    void takesOnlyTheOneUnitOfAField() {
        assertThat(checks.required("humidity", field("45", "V"), FixedUnit.PERCENT))
                .isEmpty();
        assertThat(codeAt("humidity.unit")).isEqualTo("unit.unknown");

        assertThat(checks.required("humidity", field("45", "%"), FixedUnit.PERCENT))
                .isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "0.000", "-3", "0:00"})
    void refusesZeroAndLessWhereOnlyMoreCanBe(String typed) {
        var read = checks.required("runs[0].time", field(typed, "s"), DurationUnit.class);

        assertThat(read).isPresent();
        assertThat(checks.positive("runs[0].time", read)).isEmpty();
        assertThat(codeAt("runs[0].time.number")).isEqualTo("number.notPositive");
    }

    @Test
    void showsAReadingAsItWasTyped() {
        var colon = EnteredField.of(new Entered("1:02.4", DurationUnit.MINUTES_SECONDS), DurationUnit.MINUTE);
        var none = EnteredField.of(null, PressureUnit.BAR);

        assertThat(colon.getNumber()).isEqualTo("1:02.4");
        assertThat(colon.getUnit()).isEqualTo("s");
        assertThat(none.isBlank()).isTrue();
        assertThat(none.getUnit()).isEqualTo("bar");
    }

    @Test
    void countsTheCharactersOfALongText() {
        assertThat(checks.text("notes", "x".repeat(10_000), 4_000, false)).isEmpty();

        assertThat(errors.getFieldError("notes").getArguments()).containsExactly("10000", "4000");
    }

    @Test
    void refusesTextThatADatabaseCannotHold() {
        assertThat(checks.text("notes", "a\u0000b", 100, false)).isEmpty();
        assertThat(codeAt("notes")).isEqualTo("text.control");

        assertThat(checks.text("name", " two\r\nlines ", 100, true)).contains("two\nlines");
        assertThat(checks.text("name", "   ", 100, true)).isEmpty();
        assertThat(codeAt("name")).isEqualTo("text.missing");
    }

    @ParameterizedTest
    @CsvSource({
        "2024-13-01, date.unknown",
        "2023-02-29, date.unknown",
        "01/03/2024, date.unknown",
        "0024-03-01, date.tooEarly",
        "'', date.missing"
    })
    void refusesWhatIsNoDay(String typed, String code) {
        assertThat(checks.date("day", typed, true)).isEmpty();

        assertThat(codeAt("day")).isEqualTo(code);
    }

    @Test
    void readsDaysTimesAndWholeNumbers() {
        assertThat(checks.date("day", "2024-02-29", true)).contains(LocalDate.of(2024, 2, 29));
        assertThat(checks.time("hour", "07:30", true)).contains(LocalTime.of(7, 30));
        assertThat(checks.whole("stages", "2", 1, 4, true)).contains(2);
        assertThat(checks.id("version", "12", true)).contains(12L);
        assertThat(errors.hasErrors()).isFalse();

        assertThat(checks.time("hour", "25:00", true)).isEmpty();
        assertThat(checks.whole("stages", "5", 1, 4, true)).isEmpty();
        assertThat(checks.id("version", "12; drop", true)).isEmpty();
        assertThat(errors.getFieldErrorCount()).isEqualTo(3);
    }

    @Test
    void knowsTheConstantsOfAListOnly() {
        assertThat(checks.choice("kind", "GOOD", Status.Kind.class)).contains(Status.Kind.GOOD);
        assertThat(errors.hasErrors()).isFalse();

        assertThat(checks.choice("kind", "good", Status.Kind.class)).isEmpty();
        assertThat(codeAt("kind")).isEqualTo("choice.unknown");
        assertThat(checks.choice("state", "", Status.Kind.class)).isEmpty();
        assertThat(codeAt("state")).isEqualTo("choice.missing");
        assertThat(checks.optionalChoice("state", "", Status.Kind.class)).isEmpty();
        assertThat(errors.getFieldErrorCount("state")).isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource(NumberProblem.class)
    void hasATextForEveryProblem(NumberProblem problem) {
        assertThat(ResourceBundle.getBundle("messages/web").getString("number." + problem))
                .isNotBlank();
    }

    @Test
    void offersKnownUnitsOnly() {
        var offered = Stream.of(
                        UnitChoices.pressure(),
                        UnitChoices.barometer(),
                        UnitChoices.volume(),
                        UnitChoices.flow(),
                        UnitChoices.temperature(),
                        UnitChoices.duration(),
                        UnitChoices.elevation(),
                        UnitChoices.bore(),
                        UnitChoices.power())
                .flatMap(java.util.List::stream)
                .map(Choice::code);

        assertThat(offered)
                .allSatisfy(code -> assertThat(Unit.byCode(code)).isPresent())
                .doesNotContain("K", "m:ss");
    }

    private Optional<Entered> pressure(String typed, String unit) {
        var start = form.getRuns().get(0).getStart();
        start.setNumber(typed);
        start.setUnit(unit);
        return checks.required("runs[0].start", start, PressureUnit.class);
    }

    private static EnteredField field(String number, String unit) {
        var field = new EnteredField();
        field.setNumber(number);
        field.setUnit(unit);
        return field;
    }

    private String codeAt(String path) {
        return errors.getFieldError(path).getCode();
    }
}
