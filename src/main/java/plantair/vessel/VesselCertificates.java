package plantair.vessel;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import plantair.register.Records;

/** The register of certificates and permits. */
public interface VesselCertificates extends Records<VesselCertificate> {

    @Query("select c from VesselCertificate c join fetch c.receiver r join fetch r.site where c.id = :id")
    Optional<VesselCertificate> findWithReceiver(long id);

    /** Those of some receivers, newest first. */
    @Query("select c from VesselCertificate c where c.receiver.id in :receiverIds"
            + " order by c.facts.issuedOn desc, c.id desc")
    List<VesselCertificate> findOf(Collection<Long> receiverIds);

    boolean existsByReceiverIdAndFactsNumberIgnoreCaseAndIdNot(long receiverId, String number, long id);
}
