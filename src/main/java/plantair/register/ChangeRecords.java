package plantair.register;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The lines of the change log; they can be added and read, not altered. Only {@link Changes} adds. */
public interface ChangeRecords extends Repository<ChangeRecord, Long> {

    ChangeRecord saveAndFlush(ChangeRecord change);

    long count();

    Page<ChangeRecord> findAllByOrderByIdDesc(Pageable page);

    /** The next lines of the chain, in its order. */
    List<ChangeRecord> findByChainNumberGreaterThanOrderByChainNumber(long number, Limit limit);

    /** Lines of the time before there was a chain. */
    List<ChangeRecord> findByChainNumberIsNullOrderById(Limit limit);

    /** The ids that lines of a kind tell of, after another id, in order. */
    @Query(
            "select distinct c.objectId from ChangeRecord c where c.kind = :kind and c.objectId > :id order by c.objectId")
    List<Long> objectIdsAfter(ChangeKind kind, long id, Limit limit);

    /** The newest lines about the records of a kind with ids in a range. */
    @Query("select c from ChangeRecord c where c.kind = :kind and c.objectId between :first and :last"
            + " and c.chainNumber = (select max(d.chainNumber) from ChangeRecord d where d.kind = :kind"
            + " and d.objectId = c.objectId) order by c.objectId")
    List<ChangeRecord> newestOf(ChangeKind kind, long first, long last);

    /** The same by the id of the record. */
    default Map<Long, ChangeRecord> newestById(ChangeKind kind, long first, long last) {
        return newestOf(kind, first, last).stream()
                .collect(Collectors.toMap(ChangeRecord::objectId, Function.identity()));
    }
}
