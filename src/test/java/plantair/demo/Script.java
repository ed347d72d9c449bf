package plantair.demo;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import plantair.equipment.RatingEntry;

/** Where rows go: here into a text of statements, in which the database finds the ids. */
class Script {

    private final StringBuilder sql = new StringBuilder();

    void add(Insert insert) {
        sql.append(insert);
    }

    /** The id of a thing of a register, as a value of a row. */
    Object idOf(String table, String name) {
        return new Insert.Sql(id(table, name));
    }

    /** The id of a test, as a value of a row. */
    Object idOf(UUID test) {
        return new Insert.Sql(testId(test));
    }

    void ratings(String table, String owner, Object ownerId, List<RatingEntry> ratings) {
        for (int i = 0; i < ratings.size(); i++) {
            add(new Insert(table)
                    .set(owner, ownerId)
                    .set("position", i)
                    .set("pressure", ratings.get(i).pressure())
                    .set("flow", ratings.get(i).flow())
                    .set("basis", ratings.get(i).basis()));
        }
    }

    static String id(String table, String name) {
        String column = table.equals("site") ? "name" : "tag";
        return "(select id from " + table + " where " + column + " = '" + name + "')";
    }

    static String calibrationId(UUID submission) {
        return "(select id from calibration where submission = '" + submission + "')";
    }

    static String testId(UUID submission) {
        return "(select id from pump_up_test where submission = '" + submission + "')";
    }

    static String eventId(UUID submission) {
        return "(select id from maintenance_event where submission = '" + submission + "')";
    }

    /** The day of a test where it was made. */
    static LocalDate day(DemoTest test) {
        return test.draft().performedAt().atZone(ZoneId.of(test.draft().zone())).toLocalDate();
    }

    @Override
    public String toString() {
        return sql.toString();
    }
}
