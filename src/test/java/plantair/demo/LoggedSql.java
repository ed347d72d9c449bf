package plantair.demo;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import plantair.instrument.InstrumentKind;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.quantity.Rounded;
import plantair.quantity.VesselVolume;
import plantair.testrecord.InstrumentCopy;

/** After the newest test of C-04 its fill was logged once, from well below its marks to past its rating, as SQL. */
final class LoggedSql {

    private static final Machine MACHINE = Machines.C04;
    private static final double FROM_PSI = 20;
    private static final double TO_PSI = 179;
    private static final double STEP_S = 0.05;
    private static final int EVERY = 40;
    private static final double NOISE_PSI = 0.12;

    private final Script script;

    LoggedSql(Script script) {
        this.script = script;
    }

    void add(List<DemoTest> tests) {
        DemoTest test = tests.stream()
                .filter(one -> one.draft().compressor().tag().equals(MACHINE.tag()))
                .reduce((older, newer) -> newer)
                .orElseThrow();
        String text = file(test);
        byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
        String sha256 = sha256(bytes);
        InstrumentCopy gauge = test.draft().instruments().stream()
                .filter(copy -> copy.kind() == InstrumentKind.GAUGE)
                .findFirst()
                .orElseThrow();
        script.add(new Insert("attachment_content").set("sha256", sha256));
        script.add(new Insert("attachment_piece")
                .set("sha256", sha256)
                .set("position", 0)
                .setSql("bytes", "cast('" + text + "' as bytea)"));
        script.add(new Insert("logged_run")
                .set("submission", UUID.nameUUIDFromBytes(bytes))
                .setSql("test_id", Script.testId(test.draft().submission()))
                .set("file_name", "c-04 fill.csv")
                .set("sha256", sha256)
                .set("byte_count", bytes.length)
                .set("text_code", "UTF_8")
                .set("separator", "COMMA")
                .set("decimal_mark", "POINT")
                .set("skipped_lines", 2)
                .set("leave_out_unreadable", false)
                .set("time_column", 1)
                .set("time_format", "SECONDS")
                .set("pressure_column", 2)
                .set("pressure_unit", PressureUnit.PSI.code())
                .set("pressure_reference", "GAUGE")
                .set("logger_kind", gauge.kind())
                .setSql("logger_instrument_id", Script.id("instrument", gauge.tag()))
                .set("logger_tag", gauge.tag())
                .set("logger_span", gauge.span())
                .set("logger_limit_percent", gauge.limitPercent())
                .set("logger_division", gauge.division())
                .set("logger_due_on", gauge.dueOn())
                .set("logger_status", gauge.status())
                .set("note", "Sensor on the tee of the gauge, tank let down first.")
                .set("recorded_at", test.recordedAt().plus(20, ChronoUnit.MINUTES))
                .set("recorded_by", test.draft().tester()));
    }

    /** The same physics as the runs: the tank warms while it is filled, and the machine gives less at the top. */
    private static String file(DemoTest test) {
        var random = new Random(404);
        Weather weather = MACHINE.climate().on(Script.day(test), random);
        double volume = MACHINE.trueVolume()
                * test.draft().volumes().stream()
                        .mapToDouble(copy -> VesselVolume.of(copy.volume()).cubicMetres())
                        .sum();
        var tank = new Tank(volume, weather, psi(FROM_PSI) + weather.pascals(), weather.kelvin() + 1);
        double middle = psi((MACHINE.start() + MACHINE.stop()) / 2);
        var lines = new StringBuilder("channel 1,R-05\ntime s,pressure psi\n");
        double gauge = psi(FROM_PSI);
        for (int step = 0; gauge < psi(TO_PSI); step++) {
            if (step % EVERY == 0) {
                double shown = new GaugePressure(gauge).in(PressureUnit.PSI) + NOISE_PSI * random.nextGaussian();
                lines.append(Rounded.places(step * STEP_S, 1))
                        .append(',')
                        .append(Rounded.places(shown, 2))
                        .append('\n');
            }
            double flow = test.trueFlow() * (1 - MACHINE.droop() * (gauge - middle));
            tank.step(STEP_S, flow * weather.dryDensity(), weather.kelvin() + MACHINE.inletExcess(), 0);
            gauge = tank.pressure() - weather.pascals();
        }
        return lines.toString();
    }

    private static double psi(double value) {
        return GaugePressure.of(value, PressureUnit.PSI).pascals();
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
