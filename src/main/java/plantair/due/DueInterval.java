package plantair.due;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import plantair.register.Registered;
import plantair.site.Site;

/** The interval that a site has set for something; one that was never set keeps to what the trade does, if anything. */
@Entity
@NullUnmarked
public class DueInterval implements Registered<IntervalFacts> {

    private static final int NEVER_SAVED = -1;

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne
    private Site site;

    @Enumerated(EnumType.STRING)
    private DueKind kind;

    private @Nullable Integer months;
    private String authority;

    @Version
    private @Nullable Integer version;

    protected DueInterval() {}

    DueInterval(Site site, DueKind kind) {
        this.site = site;
        this.kind = kind;
        months = kind.usualMonths();
        authority = "";
    }

    /** 0 for one that was never set. */
    @Override
    public long id() {
        return id == null ? 0 : id;
    }

    @Override
    public int version() {
        return version == null ? NEVER_SAVED : version;
    }

    /** Whether the site set it. */
    public boolean isSet() {
        return version != null;
    }

    public DueKind kind() {
        return kind;
    }

    @Override
    public IntervalFacts facts() {
        return new IntervalFacts(site.name(), kind, months, authority);
    }

    @Override
    public void revise(IntervalFacts facts) {
        months = facts.months();
        authority = facts.authority();
    }
}
