package plantair.vessel;

import jakarta.persistence.Embeddable;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.register.FactLines;
import plantair.register.Facts;

/**
 * What the register says of a relief valve.
 *
 * @param tag how the plant calls it; once only on a receiver
 * @param setPressure at which it opens, gauge
 * @param capacity flow that it lets go, as stamped; null when it is not known
 * @param codeStamp stamp of the code it was made to, may be empty
 * @param installedOn null when it is not known
 * @param note free text, may be empty
 * @param inService false once it is taken off
 */
@Embeddable
public record ValveFacts(
        String tag,
        Entered setPressure,
        @Nullable Entered capacity,
        String codeStamp,
        @Nullable LocalDate installedOn,
        String note,
        boolean inService)
        implements Facts {

    @Override
    public String name() {
        return tag;
    }

    @Override
    public String lines() {
        return new FactLines()
                .add("tag", tag)
                .add("set pressure", setPressure)
                .add("capacity", capacity)
                .add("code stamp", codeStamp)
                .add("installed", installedOn)
                .add("in service", inService)
                .add("note", note)
                .toString();
    }
}
