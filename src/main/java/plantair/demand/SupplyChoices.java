package plantair.demand;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.register.Register;
import plantair.register.Signature;
import plantair.site.Site;

/** How the sites reckon their supply. */
@Service
public class SupplyChoices {

    private final SupplyChoiceRecords records;
    private final Register<SupplyFacts, SupplyChoice> register;

    SupplyChoices(SupplyChoiceRecords records, Register<SupplyFacts, SupplyChoice> register) {
        this.records = records;
        this.register = register;
    }

    /** What a site has chosen, or the defaults. */
    @Transactional(readOnly = true)
    public SupplyChoice of(Site site) {
        return records.findBySiteId(site.id()).orElseGet(() -> new SupplyChoice(site));
    }

    /** The same of some sites, by their ids. */
    @Transactional(readOnly = true)
    public Map<Long, SupplyChoice> of(List<Site> sites) {
        Map<Long, SupplyChoice> choices = sites.stream().collect(Collectors.toMap(Site::id, SupplyChoice::new));
        records.findBySiteIdIn(choices.keySet())
                .forEach(choice -> choices.put(choice.site().id(), choice));
        return choices;
    }

    /**
     * Makes a choice.
     *
     * @param seen the one that the person saw
     * @throws plantair.web.StaleRecord when somebody else changed it meanwhile
     */
    @Transactional
    public SupplyChoice set(SupplyChoice seen, SupplyFacts facts, Signature by) {
        if (seen.isSet()) {
            return register.revise(seen.id(), seen.version(), facts, by.reason(), by.by());
        }
        seen.revise(facts);
        return register.add(seen, by.reason(), by.by());
    }
}
