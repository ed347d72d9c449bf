package plantair.testrecord;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Tells what machines were measured to deliver last. */
@Service
@Transactional(readOnly = true)
public class MeasuredOutputs {

    private final StoredResults results;

    MeasuredOutputs(StoredResults results) {
        this.results = results;
    }

    /** The newest output of a compressor; empty when no test of it joins the trend. */
    public Optional<MeasuredOutput> of(long compressorId) {
        return results.newestLinesOf(compressorId, Limit.of(1)).stream()
                .map(MeasuredOutput::of)
                .findFirst();
    }

    /** The same of some compressors, by their ids; none for one that has none. */
    public Map<Long, MeasuredOutput> of(Collection<Long> compressorIds) {
        return results.newestLineOfEach(compressorIds).stream()
                .collect(Collectors.toMap(ResultLine::compressorId, MeasuredOutput::of));
    }
}
