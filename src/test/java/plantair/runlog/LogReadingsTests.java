package plantair.runlog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plantair.pumpup.TimedPressure;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.PressureUnit;
import plantair.runlog.LogReadings.Fault;
import plantair.runlog.RefusedLog.Reason;

/** Files as loggers write them, and files that are none. */
class LogReadingsTests {

    private static final AbsolutePressure STATION = AbsolutePressure.of(1, PressureUnit.BAR);

    private static LogText text(String content) {
        return text(content, StandardCharsets.UTF_8);
    }

    private static LogText text(String content, Charset charset) {
        try {
            return LogText.of(content.getBytes(charset));
        } catch (RefusedLog refused) {
            throw new AssertionError(refused);
        }
    }

    private static LogReadings guessed(LogText text) {
        return LogReadings.of(text, LogGuess.of(text, PressureUnit.PSI), STATION);
    }

    private static List<Double> bars(LogReadings readings) {
        return readings.points().stream()
                .map(point -> point.pressure().in(PressureUnit.BAR))
                .toList();
    }

    private static List<Double> seconds(LogReadings readings) {
        return readings.points().stream().map(TimedPressure::seconds).toList();
    }

    /** The same five readings, 3 to 3.8 bar every 2 s, in the ways that loggers have. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Time (s),Pressure (bar)\n0,3.0\n2,3.2\n4,3.4\n6,3.6\n8,3.8\n",
                "0;3,0 \n2;3,2\n4;3,4\n6;3,6\n8;3,8",
                "Logger 7\nSerial 12;x\n\nt [s];p [bar]\n0,0;3,0\n2,0;3,2\n4,0;3,4\n6,0;3,6\n8,0;3,8\n\n",
                "No.\tTime\tPressure bar\n1\t00:00\t3.0\n2\t00:02\t3.2\n3\t00:04\t3.4\n4\t00:06\t3.6\n5\t00:08\t3.8\n",
                "0.0   3.0\n2.0   3.2\n4.0   3.4\n6.0   3.6\n8.0   3.8\n",
                "time,pressure kPa\r\n10:00:00,300\r\n10:00:02,320\r\n10:00:04,340\r\n10:00:06,360\r\n10:00:08,380\r\n",
                "when,bar\n2026-06-15T10:00:00Z,3.0\n2026-06-15T10:00:02Z,3.2\n2026-06-15T10:00:04Z,3.4\n"
                        + "2026-06-15T10:00:06Z,3.6\n2026-06-15T10:00:08Z,3.8\n",
                "\"Date\",\"Time\",\"Temp\",\"Press (bar)\"\n\"15.06.2026\",\"10:00:00\",\"20.1\",\"3.0\"\n"
                        + "\"15.06.2026\",\"10:00:02\",\"20.1\",\"3.2\"\n\"15.06.2026\",\"10:00:04\",\"20.1\",\"3.4\"\n"
                        + "\"15.06.2026\",\"10:00:06\",\"20.1\",\"3.6\"\n\"15.06.2026\",\"10:00:08\",\"20.1\",\"3.8\"\n",
                "stamp,mbar\n6/15/2026 11:59:58 AM,3000\n6/15/2026 12:00:00 PM,3200\n6/15/2026 12:00:02 PM,3400\n"
                        + "6/15/2026 12:00:04 PM,3600\n6/15/2026 12:00:06 PM,3800\n",
                "Time;bar (abs)\n0;4,0\n2;4,2\n4;4,4\n6;4,6\n8;4,8\n",
                "Logger;;\nDate;Time;P1 [bar];T1\n15.06.2026;10:00:00;3,0;21,4\n15.06.2026;10:00:02;3,2;21,4\n"
                        + "15.06.2026;10:00:04;3,4;21,4\n15.06.2026;10:00:06;3,6;21,4\n15.06.2026;10:00:08;3,8;21,4\n",
                "minutes,pressure_bar\n0,3.0\n0.0333333333,3.2\n0.0666666667,3.4\n0.1,3.6\n0.1333333333,3.8\n",
                "clock,bar\n23:59:56,3.0\n23:59:58,3.2\n00:00:00,3.4\n00:00:02,3.6\n00:00:04,3.8\n"
            })
    void guessesHowAFileIsRead(String content) {
        boolean unitless = content.startsWith("0");
        LogText text = text(content);

        LogReadings readings =
                LogReadings.of(text, LogGuess.of(text, unitless ? PressureUnit.BAR : PressureUnit.PSI), STATION);

        assertThat(readings.problems()).isEmpty();
        assertThat(readings.faulty()).isZero();
        assertThat(bars(readings)).hasSize(5).allSatisfy(bar -> assertThat(bar).isBetween(2.99, 3.81));
        for (int i = 0; i < 5; i++) {
            assertThat(bars(readings).get(i)).isCloseTo(3 + 0.2 * i, within(1e-9));
            assertThat(seconds(readings).get(i)).isCloseTo(2 * i, within(1e-6));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "UTF-16LE", "UTF-16BE", "ISO-8859-1"})
    void readsTheLettersOfEveryCode(String charset) {
        LogText text = text("Zeit (s);Überdruck (bar)\n0;3,0\n2;3,2\n4;3,4\n", Charset.forName(charset));

        assertThat(text.lines().get(0)).isEqualTo("Zeit (s);Überdruck (bar)");
        assertThat(bars(guessed(text))).hasSize(3);
    }

    @Test
    void passesByAByteOrderMark() {
        assertThat(text("\uFEFF0,3.0\n1,3.1\n").lines().get(0)).isEqualTo("0,3.0");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "SECONDS               | 12.5                    | 12.5",
                "MINUTES               | 0.5                     | 30",
                "HOURS                 | 0.5                     | 1800",
                "MINUTES_SECONDS       | 75:02.25                | 4502.25",
                "HOURS_MINUTES_SECONDS | 1:02:03                 | 3723",
                "HOURS_MINUTES_SECONDS | 12:00:01 AM             | 1",
                "YEAR_MONTH_DAY        | 1970-01-02 00:00:01     | 86401",
                "YEAR_MONTH_DAY        | 1970/01/01T01:00+01:00  | 0",
                "DAY_MONTH_YEAR        | 2.1.1970 00:00:00,5     | 86400.5",
                "MONTH_DAY_YEAR        | 1/2/1970 1:00 PM        | 133200"
            })
    void readsTimes(TimeFormat format, String written, double seconds) {
        assertThat(format.seconds(written, DecimalMark.POINT).orElseThrow()).isCloseTo(seconds, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "SECONDS               | 1:02",
                "SECONDS               | NaN",
                "SECONDS               | 0x1p3",
                "SECONDS               | 1d",
                "MINUTES_SECONDS       | 1:62",
                "MINUTES_SECONDS       | 1:02:03",
                "HOURS_MINUTES_SECONDS | 1:62:03",
                "YEAR_MONTH_DAY        | 2026-02-30 10:00:00",
                "YEAR_MONTH_DAY        | 10:00:00",
                "DAY_MONTH_YEAR        | 2026-06-15 10:00:00",
                "MONTH_DAY_YEAR        | 15/6/2026 10:00:00"
            })
    void readsNoOtherTimes(TimeFormat format, String written) {
        assertThat(format.seconds(written, DecimalMark.POINT)).isEmpty();
    }

    @Test
    void tellsLineAndFaultOfWhatItCannotRead() {
        LogText text = text("s,bar\n0,3.0\n1\nx,3.1\n2,---\n3,-2\n4,3.2\n3.5,3.3\n5,1e9\n6,3.4\n");

        LogReadings readings = guessed(text);

        assertThat(readings.problems())
                .extracting(problem -> problem.line() + " " + problem.why())
                .containsExactly(
                        "3 " + Fault.FEW_COLUMNS,
                        "4 " + Fault.NO_TIME,
                        "5 " + Fault.NO_PRESSURE,
                        "6 " + Fault.IMPOSSIBLE_PRESSURE,
                        "8 " + Fault.EARLIER,
                        "9 " + Fault.IMPOSSIBLE_PRESSURE);
        assertThat(readings.problems().get(1).text()).isEqualTo("x,3.1");
        assertThat(readings.backwards()).isEqualTo(1);
    }

    @Test
    void tellsTheFirstProblemsAndCountsTheRest() {
        String bad = IntStream.range(0, 50).mapToObj(i -> i + ",x").collect(Collectors.joining("\n"));
        LogText text = text("0,3\n1,3.1\n" + bad);

        LogReadings readings = guessed(text);

        assertThat(readings.problems()).hasSize(LogReadings.TOLD);
        assertThat(readings.faulty()).isEqualTo(50);
    }

    private static void assertRefused(byte[] bytes, Reason reason) {
        assertThatThrownBy(() -> LogText.of(bytes))
                .isInstanceOfSatisfying(
                        RefusedLog.class,
                        refused -> assertThat(refused.reason()).isEqualTo(reason));
    }

    @Test
    void refusesWhatIsNoText() {
        byte[] noise = new byte[5000];
        new Random(1).nextBytes(noise);

        assertRefused(new byte[0], Reason.EMPTY);
        assertRefused(" \n\n".getBytes(StandardCharsets.UTF_8), Reason.EMPTY);
        assertRefused(noise, Reason.BINARY);
        assertRefused("0,3\n1\0,3\n2,3\n".getBytes(StandardCharsets.UTF_8), Reason.BINARY);
        assertRefused(("0,3\n" + "9".repeat(1_001) + "\n").getBytes(StandardCharsets.UTF_8), Reason.LONG_LINE);
    }

    @Test
    void takesAHundredThousandLinesAndNoMore() throws RefusedLog {
        byte[] most = "1,2\n".repeat(LogText.MOST_LINES).getBytes(StandardCharsets.UTF_8);

        assertThat(LogText.of(most).lines()).hasSize(100_000);
        assertRefused("1,2\n".repeat(LogText.MOST_LINES + 1).getBytes(StandardCharsets.UTF_8), Reason.TOO_MANY_LINES);
    }

    /** Whatever it is, a guess comes back, and reading by it. */
    @Test
    void guessesSomethingOfAnyText() {
        List<String> odd =
                List.of("hello", "1", "a b c\nd e f", ";;;;", "\t", "1,2\n3", "\"", "\"\",\"", "1:2,", ":::", "x,y\n");
        odd.forEach(content -> guessed(text(content + "z")));

        assertThat(guessed(text("only words\nand more\n")).rows()).isEmpty();
        var random = new Random(5);
        for (int i = 0; i < 500; i++) {
            String content = random.ints(60, 0, 16)
                    .mapToObj(c -> "0123456789,;.:\n\t".substring(c, c + 1))
                    .collect(Collectors.joining());
            guessed(text(content + "1"));
        }
    }

    /** The slow machines that this runs on do it in a part of that. */
    @Test
    void readsAHundredThousandLinesWithinSeconds() throws RefusedLog {
        String content = IntStream.range(1, 100_000)
                .mapToObj(i -> "2026-06-15 10:" + i / 60 % 60 / 10 + i / 60 % 10 + ":" + i % 60 / 10 + i % 10 + "." + i
                        + "," + i)
                .collect(Collectors.joining("\n"));
        byte[] bytes = content.getBytes(StandardCharsets.UTF_8);
        long start = System.nanoTime();

        LogReadings readings = guessed(LogText.of(bytes));

        assertThat(readings.rows().size() + readings.faulty() - readings.backwards())
                .isEqualTo(99_999);
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(5));
    }
}
