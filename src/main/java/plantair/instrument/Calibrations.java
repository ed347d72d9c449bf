package plantair.instrument;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The calibrations; they can be added and read, not altered. One that was corrected counts no more. */
public interface Calibrations extends Repository<Calibration, Long> {

    Calibration saveAndFlush(Calibration calibration);

    Optional<Calibration> findById(long id);

    Optional<Calibration> findBySubmission(UUID submission);

    Optional<Calibration> findBySupersedesId(long supersededId);

    /** All of an instrument, newest first, those that were corrected too. */
    @Query("select c from Calibration c where c.instrument.id = :instrumentId"
            + " order by c.certificate.doneOn desc, c.id desc")
    List<Calibration> findHistory(long instrumentId);

    /** Those of some instruments that count, oldest first. */
    @Query("select c from Calibration c where c.instrument.id in :instrumentIds"
            + " and not exists (select 1 from Calibration later where later.supersedesId = c.id)"
            + " order by c.certificate.doneOn, c.id")
    List<Calibration> findCurrent(Collection<Long> instrumentIds);

    /** The last one that was done on a day or before; the day of the test counts to the new certificate. */
    @Query("select c from Calibration c where c.instrument.id = :instrumentId and c.certificate.doneOn <= :day"
            + " and not exists (select 1 from Calibration later where later.supersedesId = c.id)"
            + " order by c.certificate.doneOn desc, c.id desc limit 1")
    Optional<Calibration> findLatest(long instrumentId, LocalDate day);
}
