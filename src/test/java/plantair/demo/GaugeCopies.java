package plantair.demo;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.instrument.CalibrationStatus;
import plantair.instrument.Certificate;
import plantair.instrument.InstrumentFacts;
import plantair.testrecord.InstrumentCopy;

/** The gauge that a test names, as the register had it that day. Nobody at Juniper Mesa has registered one. */
final class GaugeCopies {

    private static final int SOON_DAYS = 30;

    private GaugeCopies() {}

    /** The gauge of a machine on a day; the id is looked up by the SQL. */
    static List<InstrumentCopy> of(Machine machine, LocalDate day) {
        return gauge(machine.tag(), day).map(facts -> copy(facts, day)).stream().toList();
    }

    private static Optional<InstrumentFacts> gauge(String machine, LocalDate day) {
        return switch (machine) {
            case "C-01" -> Optional.of(Gauges.PG_01);
            case "C-02" -> Optional.of(Gauges.PG_02);
            case "C-03" -> Optional.of(day.isBefore(Machines.NEW_GAUGE) ? Gauges.PG_03 : Gauges.PG_04);
            case "C-04" -> Optional.of(day.isBefore(Machines.GAUGE_OF_C04) ? Gauges.PG_05 : Gauges.PG_06);
            default -> Optional.empty();
        };
    }

    private static InstrumentCopy copy(InstrumentFacts facts, LocalDate day) {
        Certificate latest = Gauges.CALIBRATIONS.stream()
                .filter(one -> one.instrument() == facts)
                .map(Gauges.Calibrated::certificate)
                .filter(certificate -> !certificate.doneOn().isAfter(day))
                .max(Comparator.comparing(Certificate::doneOn))
                .orElse(null);
        return new InstrumentCopy(
                facts.kind(),
                0,
                facts.tag(),
                facts.span(),
                facts.limitPercent().orElseThrow(),
                facts.division(),
                null,
                latest == null ? null : latest.dueOn(),
                status(latest, day));
    }

    /** Said once more, because a calibration cannot be made outside the application; DemoPlantTests compares the two. */
    private static CalibrationStatus status(@Nullable Certificate latest, LocalDate day) {
        if (latest == null) {
            return CalibrationStatus.NO_CERTIFICATE;
        }
        if (!latest.leftInOrder()) {
            return CalibrationStatus.OUT_OF_ORDER;
        }
        if (latest.dueOn().isBefore(day)) {
            return CalibrationStatus.OVERDUE;
        }
        boolean soon = !latest.dueOn().isAfter(day.plusDays(SOON_DAYS));
        return soon ? CalibrationStatus.DUE_SOON : CalibrationStatus.IN_DATE;
    }
}
