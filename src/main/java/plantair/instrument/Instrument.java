package plantair.instrument;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.NullUnmarked;
import plantair.register.Registered;

/** An instrument of the plant. */
@Entity
@NullUnmarked
public class Instrument implements Registered<InstrumentFacts> {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Embedded
    private InstrumentFacts facts;

    @Version
    private int version;

    protected Instrument() {}

    public Instrument(InstrumentFacts facts) {
        this.facts = facts;
    }

    @Override
    public long id() {
        return id;
    }

    @Override
    public int version() {
        return version;
    }

    @Override
    public InstrumentFacts facts() {
        return facts;
    }

    @Override
    public void revise(InstrumentFacts newFacts) {
        facts = newFacts;
    }
}
