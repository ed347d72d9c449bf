package plantair.leaktest;

import java.util.Optional;
import org.springframework.stereotype.Component;
import plantair.register.ImportedRecords;

/** Looks for a leak test whose readings contradict each other. */
@Component
final class ImportedLeakTests implements ImportedRecords {

    private final LeakTests tests;

    ImportedLeakTests(LeakTests tests) {
        this.tests = tests;
    }

    @Override
    public Optional<Impossible> impossible() {
        return ImportedRecords.first(
                "leak_tests.csv",
                tests::findByIdGreaterThanOrderById,
                LeakTest::id,
                test -> LeakResult.of(test.draft()).counted());
    }
}
