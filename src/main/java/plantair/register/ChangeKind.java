package plantair.register;

import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What was changed, and the tables that hold it. */
public enum ChangeKind {
    /** A site. */
    SITE("site"),
    /** A compressor. */
    COMPRESSOR("compressor", new Part("rating_point", "compressor_id", "position")),
    /** A receiver. */
    RECEIVER("receiver"),
    /** A pipe piece. */
    PIPE("pipe_piece"),
    /** An instrument. */
    INSTRUMENT("instrument"),
    /** A calibration of an instrument. */
    CALIBRATION("calibration", new Part("calibration_point", "calibration_id", "position")),
    /** A pump-up test. */
    TEST(
            "pump_up_test",
            new Part("pump_up_volume", "test_id", "position"),
            new Part("pump_up_rating", "test_id", "position"),
            new Part("pump_up_run", "test_id", "position"),
            new Part("pump_up_instrument", "test_id", "position")),
    /** The decision that a calibration restates tests. */
    RESTATEMENT("gauge_restatement", new Part("gauge_restatement_test", "restatement_id", "test_id")),
    /** The quarterly readings of a machine. */
    READINGS("machine_readings"),
    /** Something that was done to a machine. */
    EVENT("maintenance_event"),
    /** The decision that a test is a baseline. */
    BASELINE("baseline_choice"),
    /** Below which parts of the baseline a plant acts. */
    LIMITS("plant_limits"),
    /** The review of a test by a second person. */
    REVIEW("test_review"),
    /** A photo or paper of a record; its bytes have a digest of their own in it. */
    ATTACHMENT("attachment", new Part("attachment_withdrawal", "attachment_id", "attachment_id")),
    /** A relief valve of a receiver. */
    VALVE("relief_valve"),
    /** A test of a relief valve. */
    VALVE_TEST("valve_test"),
    /** A certificate or permit of a receiver. */
    CERTIFICATE("vessel_certificate"),
    /** An inspection of a receiver. */
    INSPECTION("vessel_inspection", new Part("wall_reading", "inspection_id", "position")),
    /** Damage seen on a receiver, or that it is mended. */
    FINDING("vessel_finding"),
    /** A leak test of a site. */
    LEAK_TEST(
            "leak_test",
            new Part("leak_cycle", "test_id", "position"),
            new Part("leak_machine", "test_id", "position"),
            new Part("leak_reading", "test_id", "position"),
            new Part("leak_volume", "test_id", "position")),
    /** A leak that was found, and what became of it. */
    FOUND_LEAK("found_leak", new Part("found_leak_step", "leak_id", "position")),
    /** Something that takes air at a site. */
    DEMAND_ITEM("demand_item"),
    /** How a site reckons its supply. */
    SUPPLY_CHOICE("supply_choice", new Part("supply_standby", "choice_id", "compressor_id")),
    /** What a data logger saw of a test; its file has a digest of its own in it. */
    LOGGED_RUN("logged_run", new Part("logged_run_withdrawal", "logged_run_id", "logged_run_id")),
    /** How often a site wants something done. */
    INTERVAL("due_interval"),
    /** An offer of a compressor. */
    OFFER("offer"),
    /** An account; not its password and not what it was last used for. */
    ACCOUNT("account");

    private final String table;
    private final List<Part> parts;

    ChangeKind(String table, Part... parts) {
        this.table = table;
        this.parts = List.of(parts);
    }

    /**
     * A table of rows that belong to a record.
     *
     * @param table its name
     * @param owner its column with the id of the record
     * @param order its column that tells the rows of a record apart
     */
    record Part(String table, String owner, String order) {}

    /** As people say it. */
    String words() {
        return name().toLowerCase(Locale.ROOT);
    }

    String table() {
        return table;
    }

    /** The column with the id of the record; the limits of a plant have that of its site. */
    String key() {
        return this == LIMITS ? "site_id" : "id";
    }

    /** Columns that are no part of the record: of an account, what changes without a line. */
    Set<String> omitted() {
        return this == ACCOUNT ? Set.of("password_hash", "must_change_password", "epoch", "version") : Set.of();
    }

    List<Part> parts() {
        return parts;
    }
}
