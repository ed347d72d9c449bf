package plantair.vessel;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import org.jspecify.annotations.NullUnmarked;
import plantair.equipment.Receiver;
import plantair.register.Registered;

/** A relief valve of a receiver. */
@Entity
@NullUnmarked
public class ReliefValve implements Registered<ValveFacts> {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    private Receiver receiver;

    @Embedded
    private ValveFacts facts;

    @Version
    private int version;

    protected ReliefValve() {}

    public ReliefValve(Receiver receiver, ValveFacts facts) {
        this.receiver = receiver;
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

    public Receiver receiver() {
        return receiver;
    }

    @Override
    public ValveFacts facts() {
        return facts;
    }

    @Override
    public void revise(ValveFacts newFacts) {
        facts = newFacts;
    }
}
