package plantair.demand;

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

/** Something that takes air at a site. */
@Entity
@Table(name = "demand_item")
@NullUnmarked
public class SiteDemand implements Registered<DemandFacts> {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    private Site site;

    @Embedded
    private DemandFacts facts;

    @Version
    private int version;

    protected SiteDemand() {}

    public SiteDemand(Site site, DemandFacts facts) {
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
    public DemandFacts facts() {
        return facts;
    }

    @Override
    public void revise(DemandFacts newFacts) {
        facts = newFacts;
    }
}
