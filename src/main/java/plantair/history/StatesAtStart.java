package plantair.history;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import plantair.testrecord.ResultsAtStart;

/** Judges machines when the application starts, once their results are there: those without a state, or all of them. */
@Component
@Order(ResultsAtStart.ORDER + 1)
class StatesAtStart implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger(StatesAtStart.class);

    private final MachineStates states;

    StatesAtStart(MachineStates states) {
        this.states = states;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        if (arguments.containsOption("rebuild-results")) {
            int done = states.rebuild(soFar -> LOG.info("Judged {} machines anew", soFar));
            LOG.info("Judged all {} machines anew", done);
        } else {
            int added = states.fill();
            if (added > 0) {
                LOG.info("Judged {} machines that had no state yet", added);
            }
        }
    }
}
