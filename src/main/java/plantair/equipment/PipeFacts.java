package plantair.equipment;

import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.register.FactLines;
import plantair.register.Facts;

/**
 * What the register says of a pipe piece: either length and bore, or a volume.
 *
 * @param tag how the plant calls it
 * @param length length along the pipe; null when the volume is given
 * @param bore inside diameter; null when the volume is given
 * @param volume volume of a cooler, dryer or filter; null when length and bore are given
 * @param note free text, may be empty
 * @param inService false once it is gone
 */
@Embeddable
public record PipeFacts(
        String tag,
        @Nullable Entered length,
        @Nullable Entered bore,
        @Nullable Entered volume,
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
                .add("length", length)
                .add("bore", bore)
                .add("volume", volume)
                .add("in service", inService)
                .add("note", note)
                .toString();
    }
}
