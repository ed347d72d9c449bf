package plantair.register;

import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.repository.Repository;

/** The changes; they can be added and read, not altered. */
public interface Changes extends Repository<ChangeRecord, Long> {

    ChangeRecord save(ChangeRecord change);

    long count();

    Page<ChangeRecord> findAllByOrderByIdDesc(Pageable page);
}
