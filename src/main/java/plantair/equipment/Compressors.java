package plantair.equipment;

import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import plantair.register.Records;

/** The register of compressors. */
public interface Compressors extends Records<Compressor> {

    @EntityGraph(attributePaths = {"site", "ratings"})
    Optional<Compressor> findWithSiteById(long id);

    @EntityGraph(attributePaths = "site")
    List<Compressor> findByIdIn(Collection<Long> ids);

    /** Waits until nobody else records something of this compressor; until the end of the transaction nobody can. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    Optional<Compressor> findLockedById(long id);

    @EntityGraph(attributePaths = "site")
    Page<Compressor> findAllByOrderByPlateInServiceDescSiteFactsNameAscPlateTagAsc(Pageable page);

    @EntityGraph(attributePaths = "site")
    List<Compressor> findAllByPlateInServiceTrueOrderBySiteFactsNameAscPlateTagAsc();

    /** What there is to choose from, those in service first; nothing else of them is read. */
    @Query(
            "select new plantair.equipment.CompressorName(c.id, s.facts.name, c.plate.tag) from Compressor c join c.site s"
                    + " order by c.plate.inService desc, s.facts.name, c.plate.tag")
    List<CompressorName> findNames();

    List<Compressor> findAllBySiteIdOrderByPlateInServiceDescPlateTagAsc(long siteId);

    /** Those of some sites that are in service. */
    List<Compressor> findAllBySiteIdInAndPlateInServiceTrueOrderByPlateTag(Collection<Long> siteIds);

    @EntityGraph(attributePaths = {"site", "ratings"})
    List<Compressor> findBySiteFactsNameIgnoreCaseAndPlateTagIgnoreCase(String site, String tag);

    boolean existsBySiteIdAndPlateTagIgnoreCaseAndIdNot(long siteId, String tag, long id);
}
