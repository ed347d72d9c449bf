package plantair.history;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.register.Register;
import plantair.register.Signature;
import plantair.site.Site;
import plantair.trend.Limits;

/** The limits of the sites. */
@Service
public class SiteLimits {

    private final PlantLimitRecords records;
    private final Register<LimitFacts, PlantLimits> register;
    private final MachineStates states;

    SiteLimits(PlantLimitRecords records, Register<LimitFacts, PlantLimits> register, MachineStates states) {
        this.records = records;
        this.register = register;
        this.states = states;
    }

    /** What a site has set, or the defaults. */
    @Transactional(readOnly = true)
    public PlantLimits of(Site site) {
        return records.findById(site.id()).orElseGet(() -> new PlantLimits(site, Limits.DEFAULT));
    }

    /**
     * Sets the limits of a site; its machines are judged anew in the same transaction.
     *
     * @param seen the limits that the person saw
     * @throws plantair.web.StaleRecord when somebody else changed them meanwhile
     */
    @Transactional
    public PlantLimits set(PlantLimits seen, LimitFacts facts, Signature by) {
        states.lockSite(seen.id()); // before the line of the change: tests being recorded lock in that order
        PlantLimits saved;
        if (seen.isSet()) {
            saved = register.revise(seen.id(), seen.version(), facts, by.reason(), by.by());
        } else {
            seen.revise(facts);
            saved = register.add(seen, by.reason(), by.by());
        }
        states.renewSite(saved.id());
        return saved;
    }
}
