package plantair.history;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import plantair.register.Registered;
import plantair.site.Site;
import plantair.trend.Limits;

/** The limits that a site has set; a site without them keeps to the defaults. */
@Entity
@NullUnmarked
public class PlantLimits implements Registered<LimitFacts> {

    private static final int NEVER_SAVED = -1;

    @Id
    @Column(name = "site_id")
    private Long id;

    @ManyToOne
    @JoinColumn(name = "site_id", insertable = false, updatable = false)
    private Site site;

    private int watchBelow;
    private int planBelow;
    private int actBelow;

    @Version
    private @Nullable Integer version;

    protected PlantLimits() {}

    PlantLimits(Site site, Limits limits) {
        this.id = site.id();
        this.site = site;
        set(limits);
    }

    /** Id of the site. */
    @Override
    public long id() {
        return id;
    }

    @Override
    public int version() {
        return version == null ? NEVER_SAVED : version;
    }

    /** Whether the site set them; false for the defaults. */
    public boolean isSet() {
        return version != null;
    }

    public Limits limits() {
        return new Limits(watchBelow, planBelow, actBelow);
    }

    @Override
    public LimitFacts facts() {
        return new LimitFacts(site.name(), limits());
    }

    @Override
    public void revise(LimitFacts facts) {
        set(facts.limits());
    }

    private void set(Limits limits) {
        watchBelow = limits.watchBelow();
        planBelow = limits.planBelow();
        actBelow = limits.actBelow();
    }
}
