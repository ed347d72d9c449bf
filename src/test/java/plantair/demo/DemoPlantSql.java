package plantair.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes the demo plant as SQL for H2 and PostgreSQL. Ids are left to the database, so its sequences stay right. */
final class DemoPlantSql {

    static final Path FILE = Path.of("db", "demo", "R__demo_plant.sql");

    private static final String HEAD = """
            -- Made by plantair.demo.DemoPlantSql; do not edit. Everything in it is invented.
            -- Inserts only into an empty plant, see db/README.md.
            create local temporary table demo_start as
            select 1 as n where not exists (select 1 from site);

            """;

    private static final String FOOT = "\ndrop table demo_start;\n";

    private DemoPlantSql() {}

    public static void main(String[] arguments) throws IOException {
        Files.writeString(FILE, text());
    }

    /** The whole file. */
    static String text() {
        var script = new Script();
        List<DemoTest> tests = DemoPlant.tests();
        new RegisterSql(script).add();
        new VesselSql(script).add();
        new DemandSql(script).add();
        OfferSql.add(script);
        new GaugeSql(script).add();
        var testSql = new TestSql(script);
        tests.forEach(testSql::add);
        new LoggedSql(script).add(tests);
        new RestatementSql(script).add(tests);
        new WorkSql(script).add(tests);
        new LeakSql(script).add();
        ChangeSql.add(script, tests);
        return HEAD + script + FOOT;
    }
}
