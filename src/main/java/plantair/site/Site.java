package plantair.site;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.NullUnmarked;
import plantair.register.Registered;

/** A place with compressors. */
@Entity
@NullUnmarked
public class Site implements Registered<SiteFacts> {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Embedded
    private SiteFacts facts;

    @Version
    private int version;

    protected Site() {}

    public Site(SiteFacts facts) {
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
    public SiteFacts facts() {
        return facts;
    }

    @Override
    public void revise(SiteFacts newFacts) {
        facts = newFacts;
    }

    public String name() {
        return facts.name();
    }
}
