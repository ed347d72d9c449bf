package plantair.register;

import java.util.List;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.repository.Repository;

/** The changes; they can be added and read, not altered. */
public interface Changes extends Repository<ChangeRecord, Long> {

    ChangeRecord save(ChangeRecord change);

    long count();

    Page<ChangeRecord> findAllByOrderByIdDesc(Pageable page);

    /** The changes of one thing, newest first. */
    List<ChangeRecord> findByKindAndObjectIdOrderByIdDesc(ChangeKind kind, long objectId, Limit limit);
}
