package plantair.equipment;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import org.jspecify.annotations.NullUnmarked;
import plantair.register.Registered;
import plantair.site.Site;

/** An air receiver of a site. */
@Entity
@NullUnmarked
public class Receiver implements Registered<ReceiverFacts> {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    private Site site;

    @Embedded
    private ReceiverFacts facts;

    @Version
    private int version;

    protected Receiver() {}

    public Receiver(Site site, ReceiverFacts facts) {
        this.site = site;
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

    public Site site() {
        return site;
    }

    @Override
    public ReceiverFacts facts() {
        return facts;
    }

    @Override
    public void revise(ReceiverFacts newFacts) {
        facts = newFacts;
    }
}
