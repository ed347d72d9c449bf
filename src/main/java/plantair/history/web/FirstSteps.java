package plantair.history.web;

import java.util.List;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import plantair.equipment.Compressors;
import plantair.equipment.Receivers;
import plantair.site.Sites;
import plantair.testrecord.PumpUpTests;

/** The way from an empty installation to the first test. */
@Component
final class FirstSteps {

    private final Sites sites;
    private final Compressors compressors;
    private final Receivers receivers;
    private final PumpUpTests tests;

    FirstSteps(Sites sites, Compressors compressors, Receivers receivers, PumpUpTests tests) {
        this.sites = sites;
        this.compressors = compressors;
        this.receivers = receivers;
        this.tests = tests;
    }

    /** The steps in order; none once there is a test. */
    List<Step> steps() {
        return isAnyTest()
                ? List.of()
                : List.of(
                        new Step("site", "/sites/new", sites.count() > 0),
                        new Step("compressor", "/compressors/new", compressors.count() > 0),
                        new Step("receiver", "/receivers/new", receivers.count() > 0),
                        new Step("test", "/tests/new", false));
    }

    /** A million of them would take a while to count. */
    private boolean isAnyTest() {
        return !tests.findByIdGreaterThanOrderById(0, Limit.of(1)).isEmpty();
    }

    /**
     * One step.
     *
     * @param name part of the key of its words
     * @param href where it is done
     * @param done whether it was done
     */
    record Step(String name, String href, boolean done) {}
}
