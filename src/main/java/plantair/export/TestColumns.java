package plantair.export;

import java.util.List;
import java.util.stream.Stream;

/** Every column of the file of tests, in order. */
final class TestColumns {

    static final List<TestColumn> ALL = Stream.of(
                    IdentityColumns.all(),
                    ReadingColumns.all(),
                    InstrumentColumns.all(),
                    CheckColumns.all(),
                    GuideColumns.all(),
                    TestResultColumns.all(),
                    JudgementColumns.all(),
                    BudgetColumns.all(),
                    RunResultColumns.all())
            .flatMap(columns -> columns)
            .toList();

    private TestColumns() {}
}
