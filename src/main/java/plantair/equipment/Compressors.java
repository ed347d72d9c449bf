package plantair.equipment;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import plantair.register.Records;

/** The register of compressors. */
public interface Compressors extends Records<Compressor> {

    @EntityGraph(attributePaths = "site")
    Optional<Compressor> findWithSiteById(long id);

    @EntityGraph(attributePaths = "site")
    Page<Compressor> findAllByOrderByPlateInServiceDescSiteFactsNameAscPlateTagAsc(Pageable page);

    @EntityGraph(attributePaths = "site")
    List<Compressor> findAllByPlateInServiceTrueOrderBySiteFactsNameAscPlateTagAsc();

    @EntityGraph(attributePaths = "site")
    List<Compressor> findAllByOrderByPlateInServiceDescSiteFactsNameAscPlateTagAsc();

    Optional<Compressor> findBySiteIdAndPlateTagIgnoreCase(long siteId, String tag);
}
