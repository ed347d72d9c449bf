package plantair.demo;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import plantair.leaktest.LeakComponent;
import plantair.leaktest.LeakPlace;
import plantair.leaktest.LeakPriority;
import plantair.leaktest.LeakTestKind;
import plantair.leaktest.StepKind;
import plantair.supply.SizedBy;

/**
 * Leak tests and the leak survey of the demo plant as SQL. C-02 feeds the quay alone at night: it delivers about 109 cfm by
 * then, so that 24 % of its time is 26 cfm, and after a round of repairs 12 % is 13. The hill loses 60 L/min.
 */
final class LeakSql {

    private static final String AMINA = "Amina Diallo";
    private static final String SOREN = "Søren Kjærgaard";

    private static final List<Night> NIGHTS = List.of(
            new Night(
                    1,
                    "2024-11-16T23:20",
                    List.of("72 226", "70 231", "74 229", "71 224", "73 230"),
                    "Packing and fruit line walked through, all valves shut. Hisses by the retorts can be heard from the door.",
                    null),
            new Night(2, "2025-04-05T22:50", List.of("88 205", "91 198", "60 240"), "After the first repairs.", null),
            new Night(
                    3,
                    "2025-04-05T22:50",
                    List.of("88 205", "91 198", "60 240"),
                    "After the first repairs.",
                    "the night cleaners ran a blow gun"),
            new Night(
                    4,
                    "2025-04-12T23:05",
                    List.of("38 281", "37 279", "39 284", "38 277", "38 282"),
                    "Same walk, nobody on the lines.",
                    null),
            new Night(
                    5,
                    "2026-04-18T23:10",
                    List.of("44 262", "45 259", "43 265", "46 261", "44 263"),
                    "A year on. The new coupling rail at line 3 was not there before.",
                    null));

    private static final List<Found> FOUND = List.of(
            leak(
                            "Q-01",
                            "Retort 2, steam side, behind the gauge board",
                            "THREAD",
                            "ULTRASOUND",
                            "4.5",
                            "HIGH",
                            "2024-11-18")
                    .then("REPAIRED 2024-12-03 nipple cut new and sealed", "TIGHT 2024-12-10 "),
            leak("Q-02", "Line 1, first filler, left coupling", "COUPLING", "JUDGED", "2", "MEDIUM", "2024-11-18")
                    .then(
                            "REPAIRED 2024-12-03 seal",
                            "STILL_LEAKS 2025-01-14 worse",
                            "REPAIRED 2025-01-20 coupling replaced",
                            "TIGHT 2025-01-27 "),
            leak("Q-03", "Header V-3, packing of the stem", "VALVE", "BAG", "3.2", "HIGH", "2024-11-19")
                    .then("REPAIRED 2025-03-22 new packing in the shutdown", "TIGHT 2025-03-29 "),
            leak("Q-04", "Fruit line, drain leg under the stair", "DRAIN", "HOLE", null, "HIGH", "2024-11-19")
                    .then("REPAIRED 2025-03-22 float drain in place of a cracked cock", "TIGHT 2025-03-29 "),
            leak("Q-05", "Boiler house, hose reel", "HOSE", "ULTRASOUND", "1.8", "LOW", "2025-02-11")
                    .then("REPAIRED 2025-04-08 hose shortened"),
            leak("Q-06", "Compressor house, dryer outlet flange", "FILTER", "JUDGED", "1", "LOW", "2025-04-12"),
            leak(
                            "Q-07",
                            "Line 3, new coupling rail, third from the door",
                            "COUPLING",
                            "ULTRASOUND",
                            "2.6",
                            "HIGH",
                            "2026-04-20")
                    .then("REPAIRED 2026-05-04 cheap coupling taken out"),
            leak("Q-08", "Line 3, rail, last one", "COUPLING", "ULTRASOUND", "2.2", "MEDIUM", "2026-04-20"),
            leak("Q-09", "Labeller, cylinder of the gate", "CYLINDER", "JUDGED", "3", "MEDIUM", "2026-04-21"),
            leak("Q-10", "Line 3, rail, entered twice", "COUPLING", "ULTRASOUND", "2.2", "MEDIUM", "2026-04-21")
                    .then("WITHDRAWN 2026-04-22 the same as Q-08"),
            leak("H-1", "Filling head 4, regulator", "REGULATOR", "JUDGED", "0.6", "MEDIUM", "2025-09-22")
                    .then("REPAIRED 2025-10-02 diaphragm", "TIGHT 2025-10-09 "),
            leak("H-2", "Roof run, elbow over the cold store", "PIPE", null, null, "LOW", "2025-09-22"));

    private final Script script;

    LeakSql(Script script) {
        this.script = script;
    }

    private record Night(
            int number,
            String at,
            List<String> cycles,
            String note,
            @Nullable String withdraws) {}

    private record Found(
            String tag,
            String place,
            LeakComponent component,
            @Nullable SizedBy by,
            @Nullable String cfm,
            LeakPriority priority,
            LocalDate on,
            List<String> steps) {

        Found then(String... more) {
            return new Found(tag, place, component, by, cfm, priority, on, List.of(more));
        }

        boolean isOnTheHill() {
            return tag.startsWith("H");
        }
    }

    private static Found leak(
            String tag,
            String place,
            String component,
            @Nullable String by,
            @Nullable String cfm,
            String priority,
            String on) {
        return new Found(
                tag,
                place,
                LeakComponent.valueOf(component),
                by == null ? null : SizedBy.valueOf(by),
                cfm,
                LeakPriority.valueOf(priority),
                LocalDate.parse(on),
                List.of());
    }

    void add() {
        NIGHTS.forEach(this::night);
        fallOnTheHill();
        holdOfC04();
        FOUND.forEach(this::found);
    }

    private static UUID mark(String name) {
        return UUID.nameUUIDFromBytes(("leak " + name).getBytes(StandardCharsets.UTF_8));
    }

    private static String testId(UUID submission) {
        return "(select id from leak_test where submission = '" + submission + "')";
    }

    private static Insert test(UUID mark, String site, LeakTestKind kind, LeakPlace place, Instant at, String tester) {
        boolean hill = site.equals(Registers.MESA);
        return new Insert("leak_test")
                .set("submission", mark)
                .setSql("site_id", Script.id("site", site))
                .set("kind", kind)
                .set("place", place)
                .set("performed_at", at)
                .set("zone", hill ? "America/Denver" : "America/Los_Angeles")
                .set("tester", tester)
                .set("users_off", true)
                .set("drains_off", true)
                .set("site_elevation", hill ? "1600 m" : "12 [ft_i]")
                .set("leave_early", false)
                .set("confirmed", "")
                .set("recorded_at", at.plusSeconds(3600))
                .set("recorded_by", tester);
    }

    private void night(Night night) {
        UUID mark = mark("night " + night.number());
        Instant at = LocalDateTime.parse(night.at())
                .atZone(ZoneId.of("America/Los_Angeles"))
                .toInstant();
        var insert = test(mark, Registers.GULL, LeakTestKind.LOAD_TIMES, LeakPlace.WHOLE_SYSTEM, at, SOREN)
                .set("at_pressure", "100 [psi]")
                .set("note", night.note())
                .set("withdrawn", night.withdraws() != null);
        if (night.withdraws() != null) {
            insert.setSql("supersedes_id", testId(mark("night " + (night.number() - 1))))
                    .set("reason", night.withdraws());
        }
        script.add(insert);
        for (int i = 0; i < night.cycles().size(); i++) {
            String[] times = night.cycles().get(i).split(" ");
            script.add(new Insert("leak_cycle")
                    .setSql("test_id", testId(mark))
                    .set("position", i)
                    .set("loaded", times[0] + " s")
                    .set("unloaded", times[1] + " s"));
        }
        script.add(new Insert("leak_machine")
                .setSql("test_id", testId(mark))
                .set("position", 0)
                .setSql("compressor_id", Script.id("compressor", "C-02"))
                .set("label", "C-02")
                .set("capacity", night.at().startsWith("2026") ? "105 [cft_i]/min" : "109 [cft_i]/min")
                .set("capacity_at", "102 [psi]")
                .set("capacity_percent", "5 %"));
    }

    /** k = 2.0e-4 1/s from 7.5 bar, read to 0.01 bar. */
    private void fallOnTheHill() {
        UUID mark = mark("hill");
        script.add(test(
                        mark,
                        Registers.MESA,
                        LeakTestKind.FALL,
                        LeakPlace.WHOLE_SYSTEM,
                        Instant.parse("2025-09-21T03:30:00Z"),
                        AMINA)
                .set("at_pressure", "7 bar")
                .set("division", "0.02 bar")
                .set("note", "Waited ten minutes after C-12 had stopped. Filling heads blanked off.")
                .set("withdrawn", false));
        readings(mark, "bar", "0 7.50", "120 7.30", "240 7.11", "360 6.92", "480 6.74", "600 6.56");
        volume(mark, 0, "RECEIVER", "receiver", "R-12", "500 L", "11 bar", "PLATE");
        script.add(new Insert("leak_volume")
                .setSql("test_id", testId(mark))
                .set("position", 1)
                .set("kind", "PIPE")
                .setSql("source_id", Script.id("pipe_piece", "P-12"))
                .set("label", "P-12")
                .set("length", "6.5 m")
                .set("bore", "36 mm"));
    }

    private void holdOfC04() {
        UUID mark = mark("C-04");
        script.add(test(
                        mark,
                        Registers.GULL,
                        LeakTestKind.TWO_READINGS,
                        LeakPlace.TEST_VOLUME,
                        Instant.parse("2026-03-14T18:00:00Z"),
                        SOREN)
                .setSql("compressor_id", Script.id("compressor", "C-04"))
                .set("at_pressure", "150 [psi]")
                .set("division", "0.5 [psi]")
                .set("note", "V-4 weeps a little; to be lapped in the next shutdown.")
                .set("withdrawn", false));
        readings(mark, "[psi]", "0 165.0", "900 158.5");
        volume(mark, 0, "RECEIVER", "receiver", "R-05", "240 [gal_us]", "200 [psi]", "MAKER_SHEET");
    }

    private void readings(UUID mark, String unit, String... readings) {
        for (int i = 0; i < readings.length; i++) {
            String[] both = readings[i].split(" ");
            script.add(new Insert("leak_reading")
                    .setSql("test_id", testId(mark))
                    .set("position", i)
                    .set("at_time", both[0] + " s")
                    .set("pressure", both[1] + " " + unit));
        }
    }

    private void volume(
            UUID mark, int place, String kind, String table, String tag, String size, String mawp, String known) {
        script.add(new Insert("leak_volume")
                .setSql("test_id", testId(mark))
                .set("position", place)
                .set("kind", kind)
                .setSql("source_id", Script.id(table, tag))
                .set("label", tag)
                .set("volume", size)
                .set("mawp", mawp)
                .set("known_by", known));
    }

    private void found(Found one) {
        boolean hill = one.isOnTheHill();
        String finder = hill ? AMINA : SOREN;
        UUID mark = mark(one.tag());
        script.add(new Insert("found_leak")
                .set("submission", mark)
                .setSql("site_id", Script.id("site", hill ? Registers.MESA : Registers.GULL))
                .set("zone", hill ? "America/Denver" : "America/Los_Angeles")
                .set("tag", one.tag())
                .set("place", one.place())
                .set("component", one.component())
                .set("size_by", one.by())
                .set("flow", one.cfm() == null ? null : one.cfm() + " [cft_i]/min")
                .set("bore", one.by() == SizedBy.HOLE ? "0.08 [in_i]" : null)
                .set("pressure", one.by() == SizedBy.HOLE ? "100 [psi]" : null)
                .set("elevation", hill ? "1600 m" : "12 [ft_i]")
                .set("priority", one.priority())
                .set("found_on", one.on())
                .set("found_by", finder)
                .set("note", "")
                .set("recorded_at", Vessels.evening(one.on()))
                .set("recorded_by", finder));
        for (int i = 0; i < one.steps().size(); i++) {
            String[] step = one.steps().get(i).split(" ", 3);
            LocalDate day = LocalDate.parse(step[1]);
            boolean looked = !step[0].equals("REPAIRED");
            String who = looked ? ChangeBook.KEEPER : finder;
            script.add(new Insert("found_leak_step")
                    .set("submission", mark(one.tag() + " " + i))
                    .setSql("leak_id", "(select id from found_leak where submission = '" + mark + "')")
                    .set("position", i)
                    .set("kind", StepKind.valueOf(step[0]))
                    .set("done_on", day)
                    .set("done_by", who)
                    .set("note", step[2].strip())
                    .set("recorded_at", Vessels.evening(day))
                    .set("recorded_by", who));
        }
    }
}
