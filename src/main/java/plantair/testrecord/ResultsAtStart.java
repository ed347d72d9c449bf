package plantair.testrecord;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;
import plantair.instances.OneAtATime;

/**
 * Computes missing results when the application starts, before it answers anybody, and all of them anew when it is started with {@code
 * --rebuild-results}.
 */
@Component
public class ResultsAtStart implements SmartLifecycle {

    /** Its place among what runs at start; what needs the results comes after it, and the web server long after. */
    public static final int PHASE = 100;

    private static final Logger LOG = LoggerFactory.getLogger(ResultsAtStart.class);

    private final ResultProjection projection;
    private final PumpUpTests tests;
    private final StoredResults results;
    private final OneAtATime locks;
    private final ApplicationArguments arguments;
    private boolean running;

    ResultsAtStart(
            ResultProjection projection,
            PumpUpTests tests,
            StoredResults results,
            OneAtATime locks,
            ApplicationArguments arguments) {
        this.projection = projection;
        this.tests = tests;
        this.results = results;
        this.locks = locks;
        this.arguments = arguments;
    }

    @Override
    public void start() {
        run(arguments);
        running = true;
    }

    @Override
    public void stop() {
        running = false;
    }

    @Override
    public boolean isRunning() {
        return running;
    }

    @Override
    public int getPhase() {
        return PHASE;
    }

    public void run(ApplicationArguments options) {
        boolean anew = options.containsOption("rebuild-results");
        if (anew || !results.testsWithoutResult().isEmpty()) {
            locks.inTurn("results at start", () -> compute(anew));
        }
    }

    private void compute(boolean anew) {
        if (anew) {
            long total = tests.count();
            long done = projection.rebuild(soFar -> LOG.info("Rebuilt {} of {} results", soFar, total));
            LOG.info("Rebuilt the results of {} tests", done);
        } else {
            int added = projection.fill(soFar -> LOG.info("Computed {} missing results so far", soFar));
            if (added > 0) {
                LOG.info("Computed {} missing results", added);
            }
        }
    }
}
