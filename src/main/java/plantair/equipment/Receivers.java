package plantair.equipment;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.Query;
import plantair.register.Records;

/** The register of receivers. */
public interface Receivers extends Records<Receiver> {

    @EntityGraph(attributePaths = "site")
    Optional<Receiver> findWithSiteById(long id);

    /** Those whose tag contains a part, in any letters; those in service first, by site and tag. */
    @EntityGraph(attributePaths = "site")
    @Query("select r from Receiver r where (:part = '' or locate(lower(:part), lower(r.facts.tag)) > 0)"
            + " order by r.facts.inService desc, r.site.facts.name, r.facts.tag")
    Page<Receiver> findByPartOfTag(String part, Pageable page);

    List<Receiver> findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(long siteId);

    List<Receiver> findAllBySiteIdOrderByFactsInServiceDescFactsTagAsc(long siteId);

    Optional<Receiver> findBySiteIdAndFactsTagIgnoreCase(long siteId, String tag);

    Optional<Receiver> findFirstBySiteIdAndFactsTagIgnoreCase(long siteId, String tag);

    boolean existsBySiteIdAndFactsTagIgnoreCaseAndIdNot(long siteId, String tag, long id);
}
