package plantair.testrecord;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/**
 * Computes missing results when the application starts, and all of them anew when it is started with {@code
 * --rebuild-results}.
 */
@Component
@Order(ResultsAtStart.ORDER)
public class ResultsAtStart implements ApplicationRunner {

    /** Its place among what runs at start; what needs the results comes after it. */
    public static final int ORDER = 100;

    private static final Logger LOG = LoggerFactory.getLogger(ResultsAtStart.class);

    private final ResultProjection projection;
    private final PumpUpTests tests;

    ResultsAtStart(ResultProjection projection, PumpUpTests tests) {
        this.projection = projection;
        this.tests = tests;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        if (arguments.containsOption("rebuild-results")) {
            long total = tests.count();
            long done = projection.rebuild(soFar -> LOG.info("Rebuilt {} of {} results", soFar, total));
            LOG.info("Rebuilt the results of {} tests", done);
        } else {
            int added = projection.fill();
            if (added > 0) {
                LOG.info("Computed {} missing results", added);
            }
        }
    }
}
