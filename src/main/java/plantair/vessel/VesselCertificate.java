package plantair.vessel;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import org.jspecify.annotations.NullUnmarked;
import plantair.equipment.Receiver;
import plantair.register.Registered;

/** A certificate or permit of a receiver. */
@Entity
@NullUnmarked
public class VesselCertificate implements Registered<CertificateFacts> {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @ManyToOne(fetch = FetchType.LAZY)
    private Receiver receiver;

    @Embedded
    private CertificateFacts facts;

    @Version
    private int version;

    protected VesselCertificate() {}

    public VesselCertificate(Receiver receiver, CertificateFacts facts) {
        this.receiver = receiver;
        this.facts = facts;
    }

    @Override
    public long id() {
        return id;
    }

    @Override
    public int version() {
        return version;
    }

    public Receiver receiver() {
        return receiver;
    }

    @Override
    public CertificateFacts facts() {
        return facts;
    }

    @Override
    public void revise(CertificateFacts newFacts) {
        facts = newFacts;
    }
}
