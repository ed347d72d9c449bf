package plantair.demo;

import java.sql.SQLException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.LongConsumer;
import plantair.demo.Occasion.Trouble;
import plantair.equipment.Compressor;
import plantair.equipment.CompressorFacts;
import plantair.equipment.CompressorPlate;
import plantair.equipment.PipeFacts;
import plantair.equipment.ReceiverFacts;
import plantair.instrument.CalibrationStatus;
import plantair.instrument.InstrumentFacts;
import plantair.pumpup.VolumePart;
import plantair.site.Site;
import plantair.site.SiteFacts;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.VolumeCopy;

/**
 * A group of invented plants of any size: machines like the six of the demo plant, each with its own size, wear and history,
 * by the same physics. The same numbers give the same group.
 */
final class GroupPlant {

    private static final int MACHINES_A_SITE = 40;
    private static final double STEP = 0.5;
    private static final LocalDate FIRST = LocalDate.of(2016, 1, 4);
    private static final LocalDate LAST = LocalDate.of(2026, 5, 29);

    /** The one whose air settles for twelve minutes takes ten times as long to simulate, so there are fewer of its kind. */
    private static final List<Machine> KINDS = List.of(
            Machines.C01,
            Machines.C02,
            Machines.C03,
            Machines.C04,
            Machines.C11,
            Machines.C01,
            Machines.C02,
            Machines.C03,
            Machines.C04,
            Machines.C12);

    private final GroupRows rows;
    private final RegisterSql registers;
    private final int machines;
    private final long tests;

    GroupPlant(GroupRows rows, int machines, long tests) {
        this.rows = rows;
        this.registers = new RegisterSql(rows);
        this.machines = machines;
        this.tests = tests;
    }

    /**
     * Makes them, a machine at a time.
     *
     * @param progress told after each machine how many tests there are so far
     */
    void make(LongConsumer progress) throws SQLException {
        long done = 0;
        for (int number = 0; number < machines; number++) {
            Machine kind = KINDS.get(number % KINDS.size());
            if (number % MACHINES_A_SITE == 0) {
                site(number / MACHINES_A_SITE);
            }
            // spread evenly, so that the numbers add up
            int count = (int) (tests * (number + 1) / machines - tests * number / machines);
            machine(number, kind, count);
            rows.send();
            done += count;
            progress.accept(done);
        }
        rows.moveNumbers();
    }

    private static SiteFacts facts(int site) {
        SiteFacts model = Registers.SITES.get(site % Registers.SITES.size());
        return new SiteFacts(
                "Works %03d".formatted(site + 1),
                model.zone(),
                model.elevation(),
                model.barometer(),
                model.currency(),
                model.tariff(),
                "");
    }

    private void site(int site) {
        registers.site(facts(site), 0);
    }

    private void machine(int number, Machine kind, int count) throws SQLException {
        Random random = new Random(20_260_525L + number);
        SiteFacts site = facts(number / MACHINES_A_SITE);
        String suffix = "%04d".formatted(number + 1);
        CompressorFacts facts = renamed(modelOf(kind), "K-" + suffix);
        registers.compressor(site.name(), facts, 0);
        List<VolumeCopy> volumes = volumes(kind, site.name(), suffix);
        InstrumentFacts gauge = new InstrumentFacts(
                "G-" + suffix,
                Gauges.PG_06.kind(),
                new Site(site),
                Gauges.PG_06.maker(),
                suffix,
                Gauges.PG_06.span(),
                Gauges.PG_06.grade(),
                Gauges.PG_06.gradePercent(),
                Gauges.PG_06.accuracy(),
                Gauges.PG_06.division(),
                Gauges.PG_06.intervalMonths(),
                "",
                true);
        new GaugeSql(rows).gauge(gauge, 0);
        rows.send();
        Machine truth = truth(kind, facts.plate().tag(), random);
        var campaign =
                new Campaign(truth, new Compressor(new Site(site), facts), volumes, day -> List.of(copy(gauge)), STEP);
        TestSql sql = new TestSql(rows);
        campaign.tests(occasions(count, random)).forEach(sql::add);
    }

    private static CompressorFacts modelOf(Machine kind) {
        return Registers.COMPRESSORS.stream()
                .map(one -> one.facts())
                .filter(facts -> facts.name().equals(kind.tag()))
                .findFirst()
                .orElseThrow();
    }

    private static CompressorFacts renamed(CompressorFacts facts, String tag) {
        CompressorPlate p = facts.plate();
        var plate = new CompressorPlate(
                tag,
                p.makerModel(),
                "",
                p.kind(),
                p.stages(),
                p.drive(),
                p.control(),
                p.motorPower(),
                p.motorVoltage(),
                p.motorCurrent(),
                p.motorPhases(),
                p.frequency(),
                p.ratedSpeed(),
                p.displacement(),
                p.loadedHours(),
                "",
                true);
        return new CompressorFacts(plate, facts.ratings());
    }

    /** The receivers and pipes of its kind, as things of this site. */
    private List<VolumeCopy> volumes(Machine kind, String site, String suffix) {
        List<VolumeCopy> copies = new ArrayList<>();
        for (VolumeCopy model : DemoPlant.volumes(kind)) {
            String tag = model.label() + "-" + suffix;
            if (model.kind() == VolumePart.Kind.RECEIVER) {
                registers.receiver(
                        site,
                        new ReceiverFacts(
                                tag, model.volume(), model.knownBy(), model.mawp(), model.mawp(), LAST, "", true),
                        0);
            } else {
                registers.pipe(site, new PipeFacts(tag, model.length(), model.bore(), model.volume(), "", true), 0);
            }
            copies.add(new VolumeCopy(
                    model.kind(), 0, tag, model.volume(), model.length(), model.bore(), model.mawp(), model.knownBy()));
        }
        return copies;
    }

    /** A machine of its kind with a size and a wear of its own. */
    private static Machine truth(Machine kind, String tag, Random random) {
        double size = StrictMath.exp(0.08 * random.nextGaussian());
        double wear = 0.03 * random.nextDouble() * random.nextDouble();
        return new Machine(
                tag,
                kind.climate(),
                kind.flow() * size,
                kind.droop(),
                day -> 1 - wear * ChronoUnit.DAYS.between(FIRST, day) / 365.25,
                kind.inletExcess(),
                kind.treatment(),
                kind.gauge(),
                kind.start(),
                kind.stop(),
                kind.tags(),
                kind.trueVolume(),
                kind.probeError(),
                kind.habits());
    }

    private static InstrumentCopy copy(InstrumentFacts gauge) {
        return new InstrumentCopy(
                gauge.kind(),
                0,
                gauge.tag(),
                gauge.span(),
                gauge.limitPercent().orElseThrow(),
                gauge.division(),
                null,
                null,
                CalibrationStatus.NO_CERTIFICATE);
    }

    /** Evenly over ten years; now and then something is wrong. */
    private static List<Occasion> occasions(int count, Random random) {
        long days = ChronoUnit.DAYS.between(FIRST, LAST);
        List<Occasion> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int luck = random.nextInt(100);
            Trouble trouble = luck == 0 ? Trouble.LEAKING_VALVE : luck < 3 ? Trouble.COLD_START : Trouble.NONE;
            all.add(new Occasion(FIRST.plusDays(days * i / Math.max(1, count - 1)), trouble, ""));
        }
        return all;
    }
}
