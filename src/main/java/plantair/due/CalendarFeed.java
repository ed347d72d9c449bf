package plantair.due;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import java.time.Instant;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import plantair.site.Site;

/** A private address from which a calendar reads what is due. */
@Entity
@NullUnmarked
public class CalendarFeed {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long accountId;
    private String tokenDigest;

    @ManyToOne
    private @Nullable Site site;

    private Instant madeAt;

    protected CalendarFeed() {}

    CalendarFeed(long accountId, String tokenDigest, @Nullable Site site, Instant madeAt) {
        this.accountId = accountId;
        this.tokenDigest = tokenDigest;
        this.site = site;
        this.madeAt = madeAt;
    }

    public long id() {
        return id;
    }

    /** The one site that it tells of; null for all. */
    public @Nullable Site site() {
        return site;
    }

    public Instant madeAt() {
        return madeAt;
    }
}
