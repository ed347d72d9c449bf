package plantair.audit;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.ExitCodeGenerator;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** {@code java -jar … verify}: checks the records, says what it found, and ends with 0 when all is sound, else with 3. */
@Component
@Order(1)
class VerifyCommand implements ApplicationRunner, ExitCodeGenerator {

    /** The command. */
    static final String VERIFY = "verify";

    private static final Logger LOG = LoggerFactory.getLogger(VerifyCommand.class);
    private static final int UNSOUND = 3;
    private static final long STEP = 10_000;

    private final AuditCheck check;
    private boolean sound = true;
    private long told;

    VerifyCommand(AuditCheck check) {
        this.check = check;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        if (!arguments.getNonOptionArgs().contains(VERIFY)) {
            return;
        }
        AuditReport report = check.check(this::progress);
        LOG.info(
                "Read {} changes and {} records; the chain ends with {}",
                report.lines(),
                report.records(),
                report.end());
        report.faults().forEach(fault -> LOG.error("{} {} at change {}", fault.code(), fault.record(), fault.line()));
        sound = report.isSound();
        if (sound) {
            LOG.info("Every record is as it was recorded");
        } else {
            LOG.error("{} faults", report.faultCount());
        }
    }

    private void progress(long done) {
        if (done >= told + STEP) {
            told = done;
            LOG.info("{} changes and records read", done);
        }
    }

    @Override
    public int getExitCode() {
        return sound ? 0 : UNSOUND;
    }
}
