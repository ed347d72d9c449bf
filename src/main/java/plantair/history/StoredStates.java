package plantair.history;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The projection of what the overview says of the machines. */
interface StoredStates extends Repository<MachineState, Long> {

    MachineState save(MachineState state);

    Optional<MachineState> findById(long compressorId);

    /** Every machine: those in service first, then worst first; never tested ones after those. */
    @Query("select new plantair.history.MachineRank(c.id, s.id, c.plate.tag, c.plate.inService, m.standing)"
            + " from Compressor c join c.site s left join MachineState m on m.compressorId = c.id"
            + " order by c.plate.inService desc, coalesce(m.rankNumber, 1000), coalesce(m.part, 1.0d),"
            + " s.facts.name, c.plate.tag, c.id")
    List<MachineRank> ranks();

    @Query(
            "select new plantair.history.MachineLine(c.id, c.plate.tag, s.facts.name, c.plate.kind, c.plate.inService, m)"
                    + " from Compressor c join c.site s left join MachineState m on m.compressorId = c.id"
                    + " where c.id in :compressorIds")
    List<MachineLine> linesOf(Collection<Long> compressorIds);

    @Query("select c.id from Compressor c where c.site.id = :siteId order by c.id")
    List<Long> compressorsOf(long siteId);

    /** Compressors with a current test and no state. */
    @Query(
            "select distinct r.compressorId from StoredResult r where r.currentRecord = true"
                    + " and not exists (select 1 from MachineState m where m.compressorId = r.compressorId) order by r.compressorId")
    List<Long> missing();

    /** As many as {@link #missing()}, by the machines and not by their results, since those are many. */
    @Query(
            "select count(c) from Compressor c where not exists (select 1 from MachineState m where m.compressorId = c.id)"
                    + " and exists (select 1 from PumpUpTest t where t.compressor = c)")
    long waiting();

    @Query("select distinct r.compressorId from StoredResult r where r.currentRecord = true order by r.compressorId")
    List<Long> tested();

    @Modifying
    @Query("delete from MachineState")
    int deleteAll();
}
