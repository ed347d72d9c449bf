package plantair.leaktest;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import plantair.register.ImportedRecords;

/** Looks for a leak test whose readings contradict each other. */
@Component
final class ImportedLeakTests implements ImportedRecords {

    private static final int BATCH = 100;

    private final LeakTests tests;

    ImportedLeakTests(LeakTests tests) {
        this.tests = tests;
    }

    @Override
    public Optional<Impossible> impossible() {
        long last = 0;
        List<LeakTest> batch = tests.findByIdGreaterThanOrderById(last, Limit.of(BATCH));
        while (!batch.isEmpty()) {
            for (LeakTest test : batch) {
                if (!isPossible(test)) {
                    return Optional.of(new Impossible("leak_tests.csv", test.id()));
                }
                last = test.id();
            }
            batch = tests.findByIdGreaterThanOrderById(last, Limit.of(BATCH));
        }
        return Optional.empty();
    }

    private static boolean isPossible(LeakTest test) {
        try {
            LeakResult.of(test.draft()).counted();
            return true;
        } catch (RuntimeException contradiction) {
            return false;
        }
    }
}
