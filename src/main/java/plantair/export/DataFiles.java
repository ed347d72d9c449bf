package plantair.export;

import java.util.List;
import java.util.stream.Stream;

/** Every file of the export that is one table, in an order in which each refers to none after it. tests.csv is beside them. */
public final class DataFiles {

    /** What is registered before any test. */
    static final List<DataFile> BEFORE_TESTS = Stream.of(
                    RegisterFiles.all(),
                    InstrumentFiles.all(),
                    VesselTables.all(),
                    DemandTables.all(),
                    OfferTables.all(),
                    LeakTables.beforeTests())
            .flatMap(files -> files)
            .toList();

    /** What refers to tests. */
    static final List<DataFile> AFTER_TESTS =
            Stream.concat(Stream.of(LeakTables.machines()), RecordFiles.all()).toList();

    /** All of them. */
    public static final List<DataFile> ALL =
            Stream.concat(BEFORE_TESTS.stream(), AFTER_TESTS.stream()).toList();

    /** The tables in an order in which they can be filled; those of tests.csv among them. */
    public static final List<DataFile> TABLES = Stream.of(
                    BEFORE_TESTS.stream(), Stream.of(TestTables.TESTS, TestTables.RUNS), AFTER_TESTS.stream())
            .flatMap(files -> files)
            .toList();

    private DataFiles() {}
}
