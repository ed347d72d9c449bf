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

    /** Those whose tag contains a part, in any letters; those in service first, by kind and tag. */
    @EntityGraph(attributePaths = "facts.keptAt")
    @Query("select i from Instrument i where (:part = '' or locate(lower(:part), lower(i.facts.tag)) > 0)"
            + " order by i.facts.inService desc, i.facts.kind, i.facts.tag")
    Page<Instrument> findByPartOfTag(String part, Pageable page);

    /**
     * What a form offers of a kind: those in service that are kept at a site or carried between sites, or all in service; the
     * one that is chosen already stays among them, also when it is kept elsewhere or retired by now.
     *
     * @param chosen what the form says; what is no id chooses nothing
     */
    default List<Instrument> offered(InstrumentKind kind, long siteId, String chosen, boolean anywhere) {
        long id = chosen.matches("\\d{1,18}") ? Long.parseLong(chosen) : 0;
        return anywhere ? findAnywhere(kind, id) : findAtHand(kind, siteId, id);
    }

    /** Those in service that are kept at a site or carried between sites, and the one that is chosen. */
    @Query("select i from Instrument i where i.facts.kind = :kind and (i.id = :chosen or i.facts.inService = true"
            + " and (i.facts.keptAt.id = :siteId or i.facts.keptAt is null)) order by i.facts.tag")
    List<Instrument> findAtHand(InstrumentKind kind, long siteId, long chosen);

    /** Those in service wherever they are kept, and the one that is chosen. */
    @Query("select i from Instrument i where i.facts.kind = :kind and (i.id = :chosen or i.facts.inService = true)"
            + " order by i.facts.tag")
    List<Instrument> findAnywhere(InstrumentKind kind, long chosen);

    /** Whether one in service is kept at another site. */
    boolean existsByFactsInServiceTrueAndFactsKeptAtIdNot(long siteId);

    Optional<Instrument> findFirstByFactsTagIgnoreCase(String tag);

    boolean existsByFactsTagIgnoreCaseAndIdNot(String tag, long id);
}
