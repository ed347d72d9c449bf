package plantair.demand;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import plantair.register.Records;

/** The register of what takes air. */
public interface DemandItems extends Records<SiteDemand> {

    @EntityGraph(attributePaths = "site")
    Optional<SiteDemand> findWithSiteById(long id);

    /** Those of some sites in use, in the order of their labels. */
    List<SiteDemand> findBySiteIdInAndFactsInServiceTrueOrderByFactsLabel(Collection<Long> siteIds);

    /** Those in use of one kind. */
    List<SiteDemand> findBySiteIdAndFactsKindAndFactsInServiceTrueOrderByFactsLabel(long siteId, DemandKind kind);

    /** All of a site, those out of use last. */
    Page<SiteDemand> findBySiteIdOrderByFactsInServiceDescFactsLabelAsc(long siteId, Pageable page);

    boolean existsBySiteIdAndFactsLabelIgnoreCaseAndIdNot(long siteId, String label, long id);
}
