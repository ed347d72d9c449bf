package plantair.testrecord;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads the last tests of machines whole, for what their histories do not hold, as the power read in them. */
@Service
@Transactional(readOnly = true)
public class NewestTests {

    /** Older readings say little of today. */
    private static final int NEWEST = 40;

    private static final Comparator<PumpUpTest> NEWEST_FIRST = Comparator.comparing(PumpUpTest::performedAt)
            .thenComparing(PumpUpTest::id)
            .reversed();

    private final PumpUpTests tests;

    NewestTests(PumpUpTests tests) {
        this.tests = tests;
    }

    /** The last current tests of these machines by the ids of the machines, newest first, in one query. */
    public Map<Long, List<PumpUpTest>> of(Collection<MachineHistory> histories) {
        List<Long> ids = histories.stream()
                .flatMap(history -> history.tests().stream()
                        .skip(Math.max(0, history.tests().size() - NEWEST)))
                .map(ResultLine::testId)
                .toList();
        return tests.findByIdInOrderById(ids).stream()
                .sorted(NEWEST_FIRST)
                .collect(Collectors.groupingBy(test -> test.compressor().id()));
    }
}
