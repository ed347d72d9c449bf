package plantair.register;

import java.util.EnumSet;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Begins the chain, once: the lines written before there was one are linked in their order, and each record without a line
 * gets one. After that a record without a line is a fault, never mended here. Done before the first request is taken and
 * before the first account is opened: a line that came earlier would stand where the old ones belong. Of several instances
 * that start together the first does it, and the others wait for the end of the chain.
 */
@Component
class ChainAtStart implements SmartInitializingSingleton {

    private static final Logger LOG = LoggerFactory.getLogger(ChainAtStart.class);
    private static final String BY = "Plant Air Records";
    private static final String FOUND = "was there when the chain of changes was begun";

    private final Changes changes;
    private final ChainIntake intake;
    private final JdbcTemplate jdbc;
    private final TransactionTemplate transaction;

    ChainAtStart(Changes changes, ChainIntake intake, JdbcTemplate jdbc, TransactionTemplate transaction) {
        this.changes = changes;
        this.intake = intake;
        this.jdbc = jdbc;
        this.transaction = transaction;
    }

    @Override
    public void afterSingletonsInstantiated() {
        transaction.executeWithoutResult(status -> {
            // looked at twice: an instance that starts later must not wait for a long import of another
            if (changes.end().filter(ChainAtStart::isNew).isPresent() && isNew(changes.hold())) {
                begin();
            }
        });
    }

    /** A chain that has a line was begun, whatever the mark says: taking the mark off must not let a record in. */
    private static boolean isNew(ChainEnd end) {
        return !end.begun() && end.number() == 0;
    }

    /** One transaction: a chain that is half begun would be no chain. */
    private void begin() {
        long linked = intake.takeIn(EnumSet.allOf(ChangeKind.class), BY, FOUND);
        jdbc.update("update chain_end set begun = true where id = 1");
        if (linked > 0) {
            LOG.info("Began the chain of changes with {} lines", linked);
        }
    }
}
