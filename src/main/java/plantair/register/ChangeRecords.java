package plantair.register;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import plantair.web.Paging;

/** The lines of the change log; they can be added and read, not altered. Only {@link Changes} adds. */
public interface ChangeRecords extends Repository<ChangeRecord, Long> {

    String WANTED = " locate(lower(:person), lower(c.changedBy)) > 0 and locate(lower(:name), lower(c.objectName)) > 0"
            + " and c.changedAt >= :from and c.changedAt < :until";

    String OF_ANY_KIND = " from ChangeRecord c where" + WANTED + " order by c.chainNumber desc, c.id desc";

    /** By the kind as well, which is one and the same: only so does H2 read them in the order of their index. */
    String OF_A_KIND = " from ChangeRecord c where c.kind = :kind and" + WANTED
            + " order by c.kind desc, c.chainNumber desc, c.id desc";

    ChangeRecord saveAndFlush(ChangeRecord change);

    long count();

    /**
     * Lines for people, newest first; counted no further than they have pages.
     *
     * @param person part of the name of who did it, in any letters
     * @param name the same of what was changed
     */
    @Query(
            value = "select c" + OF_ANY_KIND,
            countQuery = "select count(*) from (select c.id as id" + OF_ANY_KIND + " limit " + Paging.AND_ONE_MORE
                    + ") some")
    Page<ChangeRecord> find(String person, String name, Instant from, Instant until, Pageable page);

    /** The same of one kind. */
    @Query(
            value = "select c" + OF_A_KIND,
            countQuery =
                    "select count(*) from (select c.id as id" + OF_A_KIND + " limit " + Paging.AND_ONE_MORE + ") some")
    Page<ChangeRecord> findOfKind(
            ChangeKind kind, String person, String name, Instant from, Instant until, Pageable page);

    /** The lines about one thing, newest first. */
    List<ChangeRecord> findByKindAndObjectIdOrderByIdDesc(ChangeKind kind, long objectId, Limit limit);

    /** The next lines of the chain, in its order. */
    List<ChangeRecord> findByChainNumberGreaterThanOrderByChainNumber(long number, Limit limit);

    /** Lines of the time before there was a chain. */
    List<ChangeRecord> findByChainNumberIsNullOrderById(Limit limit);

    /** Lines that no chain can hold: its numbers go from 1. */
    @Query("select c from ChangeRecord c where c.chainNumber is null or c.chainNumber < 1 order by c.id")
    List<ChangeRecord> findOutsideChain(Limit limit);

    /** The ids that lines of a kind tell of, from one on, in order. */
    @Query(
            "select distinct c.objectId from ChangeRecord c where c.kind = :kind and c.objectId >= :id order by c.objectId")
    List<Long> objectIdsFrom(ChangeKind kind, long id, Limit limit);

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
