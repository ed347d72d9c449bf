package plantair.demo;

import java.time.LocalDate;
import java.util.UUID;
import plantair.vessel.FindingKind;

/** Safety records of the receivers and the intervals of the sites as SQL. */
final class VesselSql {

    private static final String INSPECTOR = "Inspector T. Okafor, commission 4471 (invented)";

    private final Script script;

    VesselSql(Script script) {
        this.script = script;
    }

    void add() {
        Vessels.INTERVALS.forEach(one -> script.add(new Insert("due_interval")
                .setSql("site_id", Script.id("site", one.site()))
                .set("kind", one.kind())
                .set("months", one.months())
                .set("authority", one.authority())
                .set("version", 0)));
        Vessels.VALVES.forEach(one -> script.add(new Insert("relief_valve")
                .setSql("receiver_id", Script.id("receiver", one.receiver()))
                .set("tag", one.tag())
                .set("set_pressure", one.set())
                .set("capacity", one.capacity())
                .set("code_stamp", one.capacity() == null ? "" : "UV")
                .set("installed_on", one.installed())
                .set("note", "")
                .set("in_service", true)
                .set("version", 0)));
        Vessels.TESTS.forEach(this::test);
        Vessels.PAPERS.forEach(one -> script.add(new Insert("vessel_certificate")
                .setSql("receiver_id", Script.id("receiver", one.receiver()))
                .set("number", one.number())
                .set("issued_by", "Invented inspection office")
                .set("issued_on", one.issued())
                .set("permitted", one.permitted())
                .set("valid_to", one.validTo())
                .set("note", "")
                .set("in_force", true)
                .set("version", 0)));
        Vessels.LOOKS.forEach(this::look);
        script.add(new Insert("vessel_finding")
                .set("submission", UUID.nameUUIDFromBytes(new byte[] {13}))
                .setSql("receiver_id", Script.id("receiver", "R-13"))
                .set("found_on", LocalDate.of(2021, 10, 5))
                .set("kind", FindingKind.NO_PLATE)
                .set("note", "Painted over; nothing can be read under the paint.")
                .set("recorded_at", Vessels.evening(LocalDate.of(2021, 10, 5)))
                .set("recorded_by", ChangeBook.KEEPER));
    }

    private void test(Vessels.Test one) {
        script.add(new Insert("valve_test")
                .set("submission", one.submission())
                .setSql("valve_id", Script.id("relief_valve", one.valve()))
                .set("done_on", one.day())
                .set("method", one.method())
                .set("popped_at", one.poppedAt())
                .set("passed", one.passed())
                .set("done_by", "Harbour bench")
                .set("note", one.note())
                .set("withdrawn", false)
                .set("recorded_at", Vessels.evening(one.day()))
                .set("recorded_by", ChangeBook.KEEPER));
    }

    private void look(Vessels.Look one) {
        boolean measured = !one.wall().isEmpty();
        script.add(new Insert("vessel_inspection")
                .set("submission", one.submission())
                .setSql("receiver_id", Script.id("receiver", one.receiver()))
                .set("kind", one.kind())
                .set("done_on", one.day())
                .set("inspector", INSPECTOR)
                .set("employer", "Invented inspection office")
                .set("findings", one.findings())
                .set("next_due", one.next())
                .set("instrument", measured ? "UT-1, sheet of the maker" : "")
                .set("accuracy", measured ? "0.002 [in_i]" : null)
                .set("withdrawn", false)
                .set("recorded_at", Vessels.evening(one.day()))
                .set("recorded_by", ChangeBook.KEEPER));
        for (int i = 0; i < one.wall().size(); i++) {
            script.add(new Insert("wall_reading")
                    .setSql(
                            "inspection_id",
                            "(select id from vessel_inspection where submission = '" + one.submission() + "')")
                    .set("position", i)
                    .set("place", one.wall().get(i).place())
                    .set("part", one.wall().get(i).part())
                    .set("thickness", one.wall().get(i).thickness()));
        }
    }
}
