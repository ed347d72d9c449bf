package plantair.offer;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import plantair.register.Records;

/** The register of offers. */
public interface Offers extends Records<RegisteredOffer> {

    @EntityGraph(attributePaths = "site")
    Optional<RegisteredOffer> findWithSiteById(long id);

    /** Of one site, those that are open first. */
    Page<RegisteredOffer> findAllBySiteIdOrderByFactsOpenDescFactsLabelAsc(long siteId, Pageable page);

    /** The open ones of a site. */
    List<RegisteredOffer> findFirst50BySiteIdAndFactsOpenTrueOrderByFactsLabelAsc(long siteId);

    List<RegisteredOffer> findByIdGreaterThanOrderById(long id, Limit limit);

    long countBySiteId(long siteId);

    boolean existsBySiteIdAndFactsLabelIgnoreCaseAndIdNot(long siteId, String label, long id);
}
