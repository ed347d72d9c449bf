package plantair.guided;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;

/**
 * What is read of a machine each quarter, as typed; null where it was not read.
 *
 * @param hours hour meter
 * @param loadedHours meter of loaded hours
 * @param current1 motor current, first phase
 * @param current2 second phase
 * @param current3 third phase
 * @param interstagePressure gauge pressure between the stages
 * @param dischargeTemperature where the air leaves the machine
 * @param oilLevel at the glass
 * @param filterDrop pressure drop over the intake filter
 * @param separatorDrop pressure drop over the oil separator
 * @param belt its look
 * @param speed shaft speed
 * @param noise anything heard; may be empty
 */
@Embeddable
public record MachineFigures(
        @Nullable Entered hours,
        @Nullable Entered loadedHours,
        @Nullable Entered current1,
        @Nullable Entered current2,
        @Nullable Entered current3,
        @Nullable Entered interstagePressure,
        @Nullable Entered dischargeTemperature,
        @Enumerated(EnumType.STRING) @Nullable OilLevel oilLevel,
        @Nullable Entered filterDrop,
        @Nullable Entered separatorDrop,
        @Enumerated(EnumType.STRING) @Nullable Belt belt,
        @Nullable Entered speed,
        String noise) {

    /** The oil at the glass. */
    public enum OilLevel {
        /** Between the marks. */
        NORMAL,
        /** Below the lower mark. */
        LOW,
        /** Above the upper mark. */
        HIGH
    }

    /** The look of a belt, machine stopped and locked out. */
    public enum Belt {
        /** Tight, whole, dry. */
        SOUND,
        /** Slack or dusty: it may slip. */
        SLACK,
        /** Glazed, cracked or frayed. */
        WORN
    }

    /** Whether nothing was read. */
    public boolean isEmpty() {
        return noise.isEmpty()
                && Stream.of(
                                hours,
                                loadedHours,
                                current1,
                                current2,
                                current3,
                                interstagePressure,
                                dischargeTemperature,
                                oilLevel,
                                filterDrop,
                                separatorDrop,
                                belt,
                                speed)
                        .allMatch(figure -> figure == null);
    }
}
