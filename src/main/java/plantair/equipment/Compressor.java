package plantair.equipment;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Version;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import plantair.register.Registered;
import plantair.site.Site;

/** A compressor of a site. */
@Entity
@NullUnmarked
public class Compressor implements Registered<CompressorFacts> {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    private Site site;

    @Embedded
    private CompressorPlate plate;

    @ElementCollection
    @CollectionTable(name = "rating_point", joinColumns = @JoinColumn(name = "compressor_id"))
    @OrderColumn(name = "position")
    private List<RatingEntry> ratings = new ArrayList<>();

    @Version
    private int version;

    protected Compressor() {}

    public Compressor(Site site, CompressorFacts facts) {
        this.site = site;
        revise(facts);
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

    public String tag() {
        return plate.tag();
    }

    public boolean isInService() {
        return plate.inService();
    }

    /** All but the ratings. */
    public CompressorPlate plate() {
        return plate;
    }

    @Override
    public CompressorFacts facts() {
        return new CompressorFacts(plate, ratings);
    }

    @Override
    public void revise(CompressorFacts facts) {
        plate = facts.plate();
        ratings.clear();
        ratings.addAll(facts.ratings());
    }
}
