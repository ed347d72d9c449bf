package plantair.instrument;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.Query;
import plantair.register.Records;

/** The register of instruments. */
public interface Instruments extends Records<Instrument> {

    @EntityGraph(attributePaths = "facts.keptAt")
    Optional<Instrument> findWithSiteById(long id);

    @EntityGraph(attributePaths = "facts.keptAt")
    Page<Instrument> findAllByOrderByFactsInServiceDescFactsKindAscFactsTagAsc(Pageable page);

    /** Those in service that are kept at a site or carried between sites; the one that was chosen already stays among them. */
    @Query("select i from Instrument i where i.facts.kind = :kind and (i.id = :chosen or i.facts.inService = true"
            + " and (i.facts.keptAt.id = :siteId or i.facts.keptAt is null)) order by i.facts.tag")
    List<Instrument> findAtHand(InstrumentKind kind, long siteId, long chosen);

    /** Those in service wherever they are kept, and the one that was chosen already. */
    @Query("select i from Instrument i where i.facts.kind = :kind and (i.id = :chosen or i.facts.inService = true)"
            + " order by i.facts.tag")
    List<Instrument> findAnywhere(InstrumentKind kind, long chosen);

    /** Whether one in service is kept at another site. */
    boolean existsByFactsInServiceTrueAndFactsKeptAtIdNot(long siteId);

    Optional<Instrument> findFirstByFactsTagIgnoreCase(String tag);

    boolean existsByFactsTagIgnoreCaseAndIdNot(String tag, long id);
}
