package plantair.equipment;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import plantair.register.Records;

/** The register of compressors. */
public interface Compressors extends Records<Compressor> {

    @EntityGraph(attributePaths = {"site", "ratings"})
    Optional<Compressor> findWithSiteById(long id);

    @EntityGraph(attributePaths = "site")
    Page<Compressor> findAllByOrderByPlateInServiceDescSiteFactsNameAscPlateTagAsc(Pageable page);

    @EntityGraph(attributePaths = "site")
    List<Compressor> findAllByPlateInServiceTrueOrderBySiteFactsNameAscPlateTagAsc();

    @EntityGraph(attributePaths = "site")
    List<Compressor> findAllByOrderByPlateInServiceDescSiteFactsNameAscPlateTagAsc();

    List<Compressor> findAllBySiteIdOrderByPlateInServiceDescPlateTagAsc(long siteId);

    boolean existsBySiteIdAndPlateTagIgnoreCaseAndIdNot(long siteId, String tag, long id);
}
