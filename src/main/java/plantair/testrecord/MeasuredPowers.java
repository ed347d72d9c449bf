package plantair.testrecord;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.quantity.Power;

/** Tells what machines were measured to take for what they deliver. */
@Service
@Transactional(readOnly = true)
public class MeasuredPowers {

    /** Older readings of power say little of today. */
    private static final int NEWEST = 40;

    private final PumpUpTests tests;
    private final StoredResults results;

    MeasuredPowers(PumpUpTests tests, StoredResults results) {
        this.tests = tests;
        this.results = results;
    }

    /** By the newest test of a compressor that joins the trend and read its input power; empty when there is none. */
    public Optional<MeasuredPower> of(long compressorId) {
        Map<Long, ResultLine> lines = results.newestLinesOf(compressorId, Limit.of(NEWEST)).stream()
                .collect(Collectors.toMap(ResultLine::testId, Function.identity()));
        return tests.findByCompressorIdOrderByPerformedAtDescIdDesc(compressorId, PageRequest.of(0, NEWEST)).stream()
                .filter(test -> lines.containsKey(test.id()))
                .flatMap(test -> InputPower.of(test.checks()).filter(MeasuredPowers::isPower).stream()
                        .map(input -> new MeasuredPower(MeasuredOutput.of(lines.get(test.id())), input)))
                .filter(measured -> measured.output().flow().cubicMetresPerSecond() > 0)
                .findFirst();
    }

    private static boolean isPower(Power input) {
        return input.watts() > 0;
    }
}
