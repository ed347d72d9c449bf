package plantair.equipment;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import plantair.register.Records;

/** The register of receivers. */
public interface Receivers extends Records<Receiver> {

    @EntityGraph(attributePaths = "site")
    Optional<Receiver> findWithSiteById(long id);

    @EntityGraph(attributePaths = "site")
    Page<Receiver> findByFactsTagContainingIgnoreCaseOrderByFactsInServiceDescSiteFactsNameAscFactsTagAsc(
            String part, Pageable page);

    List<Receiver> findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(long siteId);

    List<Receiver> findAllBySiteIdOrderByFactsInServiceDescFactsTagAsc(long siteId);

    Optional<Receiver> findBySiteIdAndFactsTagIgnoreCase(long siteId, String tag);

    Optional<Receiver> findFirstBySiteIdAndFactsTagIgnoreCase(long siteId, String tag);

    boolean existsBySiteIdAndFactsTagIgnoreCaseAndIdNot(long siteId, String tag, long id);
}
