package plantair.history;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;
import plantair.instances.OneAtATime;
import plantair.testrecord.ResultsAtStart;

/** Judges machines when the application starts, once their results are there: those without a state, or all of them. */
@Component
class StatesAtStart implements SmartLifecycle {

    private static final Logger LOG = LoggerFactory.getLogger(StatesAtStart.class);

    private final MachineStates states;
    private final WorstFirst order;
    private final OneAtATime locks;
    private final ApplicationArguments arguments;
    private boolean running;

    StatesAtStart(MachineStates states, WorstFirst order, OneAtATime locks, ApplicationArguments arguments) {
        this.states = states;
        this.order = order;
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
        return ResultsAtStart.PHASE + 1;
    }

    void run(ApplicationArguments options) {
        boolean anew = options.containsOption("rebuild-results");
        if (anew || states.waiting() > 0) {
            locks.inTurn("states at start", () -> judge(anew));
        }
    }

    private void judge(boolean anew) {
        if (anew) {
            int done = states.rebuild(soFar -> LOG.info("Judged {} machines anew", soFar));
            LOG.info("Judged all {} machines anew", done);
        } else {
            int added = states.fill();
            if (added > 0) {
                LOG.info("Judged {} machines that had no state yet", added);
            }
        }
        order.forget();
    }
}
