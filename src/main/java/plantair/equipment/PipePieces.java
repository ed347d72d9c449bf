package plantair.equipment;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.Query;
import plantair.register.Records;

/** The register of pipe pieces. */
public interface PipePieces extends Records<PipePiece> {

    @EntityGraph(attributePaths = "site")
    Optional<PipePiece> findWithSiteById(long id);

    /** Those whose tag contains a part, in any letters; those in service first, by site and tag. */
    @EntityGraph(attributePaths = "site")
    @Query("select p from PipePiece p where (:part = '' or locate(lower(:part), lower(p.facts.tag)) > 0)"
            + " order by p.facts.inService desc, p.site.facts.name, p.facts.tag")
    Page<PipePiece> findByPartOfTag(String part, Pageable page);

    List<PipePiece> findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(long siteId);

    List<PipePiece> findAllBySiteIdOrderByFactsInServiceDescFactsTagAsc(long siteId);

    Optional<PipePiece> findFirstBySiteIdAndFactsTagIgnoreCase(long siteId, String tag);

    boolean existsBySiteIdAndFactsTagIgnoreCaseAndIdNot(long siteId, String tag, long id);
}
