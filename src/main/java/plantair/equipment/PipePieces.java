package plantair.equipment;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import plantair.register.Records;

/** The register of pipe pieces. */
public interface PipePieces extends Records<PipePiece> {

    @EntityGraph(attributePaths = "site")
    Optional<PipePiece> findWithSiteById(long id);

    @EntityGraph(attributePaths = "site")
    Page<PipePiece> findByFactsTagContainingIgnoreCaseOrderByFactsInServiceDescSiteFactsNameAscFactsTagAsc(
            String part, Pageable page);

    List<PipePiece> findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(long siteId);

    List<PipePiece> findAllBySiteIdOrderByFactsInServiceDescFactsTagAsc(long siteId);

    Optional<PipePiece> findFirstBySiteIdAndFactsTagIgnoreCase(long siteId, String tag);

    boolean existsBySiteIdAndFactsTagIgnoreCaseAndIdNot(long siteId, String tag, long id);
}
