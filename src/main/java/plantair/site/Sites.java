package plantair.site;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import plantair.register.Records;

/** The register of sites. */
public interface Sites extends Records<Site> {

    List<Site> findAllByOrderByFactsName();

    Page<Site> findAllByOrderByFactsName(Pageable page);

    Optional<Site> findByFactsNameIgnoreCase(String name);

    boolean existsByFactsNameIgnoreCaseAndIdNot(String name, long id);
}
