package plantair.leaktest;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Tells what the air systems of sites lose by leaks. */
@Service
@Transactional(readOnly = true)
public class SiteLeaks {

    /** Of so many tests on end none that tells a leak, and the site has none told. */
    private static final int LOOKED_AT = 20;

    private final LeakTests tests;

    SiteLeaks(LeakTests tests) {
        this.tests = tests;
    }

    /** The newest leak test of the whole system that was not superseded and tells a leak. */
    public Optional<SiteLeak> newest(long siteId) {
        return lately(siteId).stream().findFirst();
    }

    /** The same of some sites, by their ids; none for one that has none. */
    public Map<Long, SiteLeak> newest(Collection<Long> siteIds) {
        Map<Long, SiteLeak> newest = new HashMap<>();
        tests.findWholeSystem(siteIds, LOOKED_AT)
                .forEach(test -> leak(test).ifPresent(told -> newest.putIfAbsent(test.siteId(), told)));
        return newest;
    }

    /** The last few of those tests, newest first. */
    public List<SiteLeak> lately(long siteId) {
        return tests.findWholeSystem(siteId, Limit.of(LOOKED_AT)).stream()
                .flatMap(test -> leak(test).stream())
                .toList();
    }

    private static Optional<SiteLeak> leak(LeakTest test) {
        LeakResult result = LeakResult.of(test.draft());
        return result.counted().map(flow -> new SiteLeak(test.id(), test.on(), flow, result.at()));
    }
}
