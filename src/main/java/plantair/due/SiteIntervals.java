package plantair.due;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.register.Register;
import plantair.register.Signature;
import plantair.site.Site;

/** The intervals of the sites. */
@Service
public class SiteIntervals {

    private final DueIntervals records;
    private final Register<IntervalFacts, DueInterval> register;

    SiteIntervals(DueIntervals records, Register<IntervalFacts, DueInterval> register) {
        this.records = records;
        this.register = register;
    }

    /** What a site has set for one kind, or what the trade does. */
    @Transactional(readOnly = true)
    public DueInterval of(Site site, DueKind kind) {
        return records.findBySiteIdAndKind(site.id(), kind).orElseGet(() -> new DueInterval(site, kind));
    }

    /** All kinds of a site in their order. */
    @Transactional(readOnly = true)
    public List<DueInterval> of(Site site) {
        Map<DueKind, DueInterval> own = records.findBySiteId(site.id()).stream()
                .collect(Collectors.toMap(DueInterval::kind, Function.identity()));
        return DueKind.setBySites().stream()
                .map(kind -> own.containsKey(kind) ? own.get(kind) : new DueInterval(site, kind))
                .toList();
    }

    /**
     * Sets an interval.
     *
     * @param seen the one that the person saw
     * @throws plantair.web.StaleRecord when somebody else changed it meanwhile
     */
    @Transactional
    public DueInterval set(DueInterval seen, IntervalFacts facts, Signature by) {
        if (seen.isSet()) {
            return register.revise(seen.id(), seen.version(), facts, by.reason(), by.by());
        }
        seen.revise(facts);
        return register.add(seen, by.reason(), by.by());
    }
}
