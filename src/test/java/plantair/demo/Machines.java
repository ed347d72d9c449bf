package plantair.demo;

import static plantair.pumpup.AirTemperature.MEASURED;
import static plantair.pumpup.AirTemperature.NOT_MEASURED;
import static plantair.pumpup.AirTemperature.SETTLED;
import static plantair.quantity.PressureUnit.BAR;
import static plantair.quantity.PressureUnit.PSI;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import plantair.demo.Weather.Climate;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;

/** The truth about the six machines. */
final class Machines {

    static final LocalDate REPAIR = LocalDate.of(2023, 6, 8);
    static final LocalDate NEW_GAUGE = LocalDate.of(2023, 3, 14);
    static final LocalDate VALVES_OF_C04 = LocalDate.of(2021, 4, 14);
    static final LocalDate GAUGE_OF_C04 = LocalDate.of(2023, 9, 20);

    private static final LocalDate FIRST = LocalDate.of(2020, 1, 1);
    private static final LocalDate VALVES_GIVE_WAY = LocalDate.of(2021, 12, 1);
    private static final LocalDate C04_IS_NEW = LocalDate.of(2016, 5, 1);
    private static final LocalDate C04_VALVES_GIVE_WAY = LocalDate.of(2020, 2, 1);
    private static final Climate QUAY = new Climate(101_280, 290.5, 7, 0.68);
    private static final Climate HILL = new Climate(83_520, 291.5, 10, 0.36);
    private static final List<String> QUAY_PEOPLE = List.of("Tomás Iriarte", "Zdeňka Horáková", "Nguyễn Văn Phúc");
    private static final List<String> HILL_PEOPLE = List.of("Amina Diallo", "Søren Kjærgaard");

    /** Two-stage piston: its valves give way, and a repair brings them back. */
    static final Machine C01 = new Machine(
            "C-01",
            QUAY,
            cfm(48.3),
            1.4e-7,
            Machines::valves,
            9,
            MEASURED,
            day -> new Gauge(PSI, 1, 0.006),
            90,
            150,
            List.of("R-01"),
            1.006,
            0.4,
            new Machine.Habits(
                    false,
                    true,
                    true,
                    true,
                    QUAY_PEOPLE,
                    List.of(
                            "Drain blown first, dry.",
                            "Belt felt a bit loose, tightened after the test.",
                            "Seamer line down for cleaning, so nobody drew air.",
                            "Thermocouple through the plug on top.",
                            "Oil topped up, half a litre.")));

    /** Screw: wears slowly and steadily. */
    static final Machine C02 = new Machine(
            "C-02",
            QUAY,
            cfm(121.6),
            4e-8,
            day -> 1 - 0.022 * years(day),
            8,
            MEASURED,
            day -> new Gauge(PSI, 0.5, -0.008),
            85,
            120,
            List.of("R-02", "R-04", "P-02"),
            0.993,
            -0.5,
            new Machine.Habits(
                    false,
                    false,
                    true,
                    false,
                    QUAY_PEOPLE,
                    List.of(
                            "Dryer bypassed, both tanks on.",
                            "Inlet filter changed last week.",
                            "Warm day, doors open.",
                            "Ran it loaded 20 min before.",
                            "Sounds the same as ever.")));

    /** Vane: its old gauge showed too much. */
    static final Machine C03 = new Machine(
            "C-03",
            QUAY,
            cfm(33.4),
            1e-7,
            day -> 1 - 0.003 * years(day),
            12,
            MEASURED,
            day -> new Gauge(PSI, 1, day.isBefore(NEW_GAUGE) ? 0.05 : -0.004),
            80,
            115,
            List.of("R-03", "P-03"),
            1.004,
            0.3,
            new Machine.Habits(
                    false,
                    true,
                    true,
                    false,
                    QUAY_PEOPLE,
                    List.of(
                            "Isolated at V-3, header on C-02.",
                            "Bit of oil at the drain.",
                            "Modulation backed off for the test.",
                            "Took the temperature twice, same.")));

    /** Two-stage piston with ten years of tests: slow wear, valves mended once, another gauge since 2023. */
    static final Machine C04 = new Machine(
            "C-04",
            QUAY,
            cfm(66.2),
            1.2e-7,
            Machines::tenYears,
            9,
            MEASURED,
            day -> new Gauge(PSI, 1, day.isBefore(GAUGE_OF_C04) ? 0.004 : -0.003),
            95,
            150,
            List.of("R-05"),
            0.997,
            -0.2,
            new Machine.Habits(
                    false,
                    true,
                    true,
                    false,
                    QUAY_PEOPLE,
                    List.of(
                            "V-9 shut, tank drained until only air came.",
                            "Twenty minutes loaded before the first run.",
                            "Fruit line stood still.",
                            "Belts quiet, guards back on.",
                            "Probe in the plug of R-05.")));

    /** Single-stage piston on the hill: nobody has ever measured its receiver air. */
    static final Machine C11 = new Machine(
            "C-11",
            HILL,
            cfm(24.6),
            1.6e-7,
            day -> 1 - 0.006 * years(day),
            30,
            NOT_MEASURED,
            day -> new Gauge(PSI, 1, 0.01),
            85,
            120,
            List.of("R-11"),
            0.99,
            0,
            new Machine.Habits(
                    false,
                    false,
                    false,
                    false,
                    HILL_PEOPLE,
                    List.of(
                            "No plug for a probe on this tank.",
                            "Motor too hot to touch after.",
                            "Quick one before the shift.",
                            "Tank shell warm to the hand.")));

    /** Scroll on the hill: read again after the air has settled, all in SI. */
    static final Machine C12 = new Machine(
            "C-12",
            HILL,
            FlowRate.of(0.93, FlowUnit.CUBIC_METRE_PER_MINUTE).cubicMetresPerSecond(),
            5e-8,
            day -> 1 - 0.004 * years(day),
            10,
            SETTLED,
            day -> new Gauge(BAR, 0.05, -0.005),
            5,
            8,
            List.of("R-12", "P-12"),
            1.003,
            -0.3,
            new Machine.Habits(
                    true,
                    false,
                    true,
                    false,
                    HILL_PEOPLE,
                    List.of(
                            "Waited 12 min each time, needle still.",
                            "Filling heads idle.",
                            "Two of three scrolls could be heard, all three run.",
                            "Coffee while it settles.")));

    private Machines() {}

    private static double cfm(double value) {
        return FlowRate.of(value, FlowUnit.CFM).cubicMetresPerSecond();
    }

    private static double years(LocalDate day) {
        return ChronoUnit.DAYS.between(FIRST, day) / 365.25;
    }

    private static double valves(LocalDate day) {
        double wear = 1 - 0.004 * years(day);
        boolean good = day.isBefore(VALVES_GIVE_WAY) || !day.isBefore(REPAIR);
        return good ? wear : wear - 0.14 * ChronoUnit.DAYS.between(VALVES_GIVE_WAY, day) / 365.25;
    }

    /** Rings and bores take 1.7 % a year; the valves 7 % more until they are mended. */
    private static double tenYears(LocalDate day) {
        double wear = 1 - 0.017 * ChronoUnit.DAYS.between(C04_IS_NEW, day) / 365.25;
        boolean good = day.isBefore(C04_VALVES_GIVE_WAY) || !day.isBefore(VALVES_OF_C04);
        return good ? wear : wear - 0.07 * ChronoUnit.DAYS.between(C04_VALVES_GIVE_WAY, day) / 437;
    }
}
