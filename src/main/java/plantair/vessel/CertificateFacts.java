package plantair.vessel;

import jakarta.persistence.Embeddable;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.register.FactLines;
import plantair.register.Facts;

/**
 * What the register says of a certificate or permit.
 *
 * @param number once only for a receiver
 * @param issuedBy authority or insurer
 * @param issuedOn first day
 * @param permitted pressure that it permits, gauge; null when it names none
 * @param validTo last day; null where it has none
 * @param note free text, may be empty
 * @param inForce false once it was withdrawn or another took its place
 */
@Embeddable
public record CertificateFacts(
        String number,
        String issuedBy,
        LocalDate issuedOn,
        @Nullable Entered permitted,
        @Nullable LocalDate validTo,
        String note,
        boolean inForce)
        implements Facts {

    @Override
    public String name() {
        return number;
    }

    /** Whether its last day is past. */
    public boolean isExpired(LocalDate day) {
        return validTo != null && validTo.isBefore(day);
    }

    @Override
    public String lines() {
        return new FactLines()
                .add("number", number)
                .add("issued by", issuedBy)
                .add("issued on", issuedOn)
                .add("permitted pressure", permitted)
                .add("valid to", validTo)
                .add("in force", inForce)
                .add("note", note)
                .toString();
    }
}
