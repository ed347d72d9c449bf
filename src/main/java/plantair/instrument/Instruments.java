package plantair.instrument;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import plantair.register.Records;

/** The register of instruments. */
public interface Instruments extends Records<Instrument> {

    Page<Instrument> findAllByOrderByFactsInServiceDescFactsKindAscFactsTagAsc(Pageable page);

    List<Instrument> findAllByFactsKindAndFactsInServiceTrueOrderByFactsTag(InstrumentKind kind);

    Optional<Instrument> findFirstByFactsTagIgnoreCase(String tag);

    boolean existsByFactsTagIgnoreCaseAndIdNot(String tag, long id);
}
