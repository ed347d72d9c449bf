package plantair.offer;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import org.jspecify.annotations.NullUnmarked;
import plantair.register.Registered;
import plantair.site.Site;

/** An offer of a compressor for a site. */
@Entity
@Table(name = "offer")
@NullUnmarked
public class RegisteredOffer implements Registered<OfferFacts> {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    private Site site;

    @Embedded
    private OfferFacts facts;

    @Version
    private int version;

    protected RegisteredOffer() {}

    public RegisteredOffer(Site site, OfferFacts facts) {
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
    public OfferFacts facts() {
        return facts;
    }

    @Override
    public void revise(OfferFacts newFacts) {
        facts = newFacts;
    }
}
