package plantair.register;

import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.transaction.annotation.Transactional;
import plantair.web.NoSuchRecord;
import plantair.web.StaleRecord;

/** Adds things and changes what is said of them; each change and its record are one transaction. */
public class Register<F extends Facts, E extends Registered<F>> {

    private static final int MOST_CHANGES = 10;

    private final ChangeKind kind;
    private final Records<E> records;
    private final Changes changes;
    private final Clock clock;

    public Register(ChangeKind kind, Records<E> records, Changes changes, Clock clock) {
        this.kind = kind;
        this.records = records;
        this.changes = changes;
        this.clock = clock;
    }

    /**
     * Adds a new thing.
     *
     * @param reason why, as "bought second-hand"
     * @param by who
     */
    @Transactional
    public E add(E thing, String reason, String by) {
        E added = records.saveAndFlush(thing);
        write(added, null, reason, by);
        return added;
    }

    /**
     * Changes what is said of a thing.
     *
     * @param version the version that the person saw
     * @throws NoSuchRecord when there is none of that id
     * @throws StaleRecord when somebody else changed it meanwhile
     */
    @Transactional
    public E revise(long id, int version, F facts, String reason, String by) {
        E thing = records.findById(id).orElseThrow(() -> new NoSuchRecord(kind + " " + id));
        if (thing.version() != version) {
            throw new StaleRecord(kind + " " + id);
        }
        String before = thing.facts().lines();
        thing.revise(facts);
        E revised = records.saveAndFlush(thing);
        write(revised, before, reason, by);
        return revised;
    }

    /**
     * What was changed since a person looked, newest first.
     *
     * @param version the version that the person saw
     */
    public List<ChangeRecord> since(E thing, int version) {
        int changed = Math.min(MOST_CHANGES, Math.max(1, thing.version() - version));
        return changes.of(kind, thing.id(), Limit.of(changed));
    }

    private void write(E thing, @Nullable String before, String reason, String by) {
        F facts = thing.facts();
        changes.save(
                new ChangeRecord(clock.instant(), by, kind, thing.id(), facts.name(), before, facts.lines(), reason));
    }
}
