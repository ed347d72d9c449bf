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

/** A length of pipe, or another piece that counts as volume, of a site. */
@Entity
@NullUnmarked
public class PipePiece implements Registered<PipeFacts> {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    private Site site;

    @Embedded
    private PipeFacts facts;

    @Version
    private int version;

    protected PipePiece() {}

    public PipePiece(Site site, PipeFacts facts) {
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
    public PipeFacts facts() {
        return facts;
    }

    @Override
    public void revise(PipeFacts newFacts) {
        facts = newFacts;
    }
}
