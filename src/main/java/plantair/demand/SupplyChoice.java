package plantair.demand;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.register.Registered;
import plantair.site.Site;

/** How a site has chosen to reckon its supply; one that never chose counts every machine at the pressure of its tests. */
@Entity
@NullUnmarked
public class SupplyChoice implements Registered<SupplyFacts> {

    private static final int NEVER_SAVED = -1;

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne
    private Site site;

    private Entered workingPressure;
    private Entered reserve;
    private Entered uncertainty;

    @Enumerated(EnumType.STRING)
    private LeaksFrom leaksFrom;

    private Entered leaks;
    private Entered leaksUncertainty;
    private String note;

    @ElementCollection(fetch = FetchType.EAGER)
    @CollectionTable(name = "supply_standby", joinColumns = @JoinColumn(name = "choice_id"))
    private Set<StandbyMachine> standby = new HashSet<>();

    @Version
    private @Nullable Integer version;

    protected SupplyChoice() {}

    SupplyChoice(Site site) {
        this.site = site;
        leaksFrom = LeaksFrom.TEST;
        note = "";
    }

    /** 0 for a choice that was never made. */
    @Override
    public long id() {
        return id == null ? 0 : id;
    }

    @Override
    public int version() {
        return version == null ? NEVER_SAVED : version;
    }

    Site site() {
        return site;
    }

    /** Whether the site made it. */
    public boolean isSet() {
        return version != null;
    }

    @Override
    public SupplyFacts facts() {
        return new SupplyFacts(
                site.name(),
                workingPressure,
                reserve,
                uncertainty,
                leaksFrom,
                leaks,
                leaksUncertainty,
                List.copyOf(standby),
                note);
    }

    @Override
    public void revise(SupplyFacts facts) {
        workingPressure = facts.workingPressure();
        reserve = facts.reserve();
        uncertainty = facts.uncertainty();
        leaksFrom = facts.leaksFrom();
        leaks = facts.leaks();
        leaksUncertainty = facts.leaksUncertainty();
        standby.clear();
        standby.addAll(facts.standby());
        note = facts.note();
    }
}
