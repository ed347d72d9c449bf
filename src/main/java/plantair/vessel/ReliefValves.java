package plantair.vessel;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import plantair.register.Records;

/** The register of relief valves. */
public interface ReliefValves extends Records<ReliefValve> {

    @Query("select v from ReliefValve v join fetch v.receiver r join fetch r.site where v.id = :id")
    Optional<ReliefValve> findWithReceiver(long id);

    /** Those of some receivers, in service first. */
    @Query(
            "select v from ReliefValve v where v.receiver.id in :receiverIds order by v.facts.inService desc, v.facts.tag")
    List<ReliefValve> findOf(Collection<Long> receiverIds);

    /** The intervals that the sites of some receivers have set for tests of relief valves. */
    @Query("select new plantair.vessel.ValveInterval(r.id, i.months, i.authority) from Receiver r"
            + " join DueInterval i on i.site = r.site where r.id in :receiverIds"
            + " and i.kind = plantair.due.DueKind.VALVE_TEST and i.months is not null")
    List<ValveInterval> findIntervals(Collection<Long> receiverIds);

    boolean existsByReceiverIdAndFactsTagIgnoreCaseAndIdNot(long receiverId, String tag, long id);
}
