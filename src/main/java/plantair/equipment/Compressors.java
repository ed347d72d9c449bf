package plantair.equipment;

import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import plantair.register.Records;

/** The register of compressors. */
public interface Compressors extends Records<Compressor> {

    String NAME = "select new plantair.equipment.CompressorName(c.id, s.facts.name, c.plate.tag)"
            + " from Compressor c join c.site s";

    /**
     * Condition of a query for compressors {@code c} whose tag contains {@code :tag}, in any letters; nothing is in every tag. No
     * query of a page has a {@code like}: H2 compiles such a one anew each time.
     */
    String TAGGED = "(:tag = '' or locate(lower(:tag), lower(c.plate.tag)) > 0)";

    @EntityGraph(attributePaths = {"site", "ratings"})
    Optional<Compressor> findWithSiteById(long id);

    @EntityGraph(attributePaths = "site")
    List<Compressor> findByIdIn(Collection<Long> ids);

    /** Waits until nobody else records something of this compressor; until the end of the transaction nobody can. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    Optional<Compressor> findLockedById(long id);

    @EntityGraph(attributePaths = "site")
    Page<Compressor> findAllByOrderByPlateInServiceDescSiteFactsNameAscPlateTagAsc(Pageable page);

    /**
     * Those in service to choose from, by site and tag; nothing else of them is read.
     *
     * @param tag part of the tag, in any letters
     */
    @Query(
            value = NAME
                    + " where c.plate.inService = true and " + TAGGED
                    + " order by s.facts.name, c.plate.tag, c.id",
            countQuery = "select count(c) from Compressor c where c.plate.inService = true and " + TAGGED)
    Page<CompressorName> findInService(String tag, Pageable page);

    /** Those in service with just this tag, in any letters, by site. */
    @Query(NAME + " where c.plate.inService = true and lower(c.plate.tag) = lower(:tag) order by s.facts.name, c.id")
    List<CompressorName> findInServiceByTag(String tag);

    /** The first to choose from of a site or of all (site 0), those in service first. */
    @Query(NAME
            + " where :siteId = 0L or s.id = :siteId order by c.plate.inService desc, s.facts.name, c.plate.tag, c.id")
    List<CompressorName> findNames(long siteId, Limit limit);

    /** What is written of one where it is chosen. */
    @Query(NAME + " where c.id = :id")
    Optional<CompressorName> findName(long id);

    List<Compressor> findAllBySiteIdOrderByPlateInServiceDescPlateTagAsc(long siteId);

    /** Those of some sites that are in service. */
    List<Compressor> findAllBySiteIdInAndPlateInServiceTrueOrderByPlateTag(Collection<Long> siteIds);

    @EntityGraph(attributePaths = {"site", "ratings"})
    List<Compressor> findBySiteFactsNameIgnoreCaseAndPlateTagIgnoreCase(String site, String tag);

    boolean existsBySiteIdAndPlateTagIgnoreCaseAndIdNot(long siteId, String tag, long id);
}
