package plantair.equipment;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;

/**
 * What the register says of a compressor, but for its ratings.
 *
 * @param tag how the plant calls it
 * @param makerModel as on the plate, may be empty
 * @param serialNumber as on the plate, may be empty
 * @param kind how it compresses
 * @param stages number of stages
 * @param drive how the motor turns it
 * @param control how it follows demand
 * @param motorPower plate power
 * @param motorVoltage plate voltage
 * @param motorCurrent full-load current
 * @param motorPhases 1 or 3
 * @param frequency supply frequency
 * @param ratedSpeed shaft speed of the rating
 * @param displacement swept volume of the first stage times speed
 * @param loadedHours hours loaded in a year, as its hour meter shows now
 * @param note free text, may be empty
 * @param inService false once it is retired
 */
@Embeddable
public record CompressorPlate(
        String tag,
        String makerModel,
        String serialNumber,
        @Enumerated(EnumType.STRING) CompressorKind kind,
        int stages,
        @Enumerated(EnumType.STRING) Drive drive,
        @Enumerated(EnumType.STRING) Control control,
        @Nullable Entered motorPower,
        @Nullable Entered motorVoltage,
        @Nullable Entered motorCurrent,
        @Nullable Integer motorPhases,
        @Nullable Entered frequency,
        @Nullable Entered ratedSpeed,
        @Nullable Entered displacement,
        @Nullable Entered loadedHours,
        String note,
        boolean inService) {

    /** A plate without displacement and loaded hours. */
    public CompressorPlate(
            String tag,
            String makerModel,
            String serialNumber,
            CompressorKind kind,
            int stages,
            Drive drive,
            Control control,
            @Nullable Entered motorPower,
            @Nullable Entered motorVoltage,
            @Nullable Entered motorCurrent,
            @Nullable Integer motorPhases,
            @Nullable Entered frequency,
            @Nullable Entered ratedSpeed,
            String note,
            boolean inService) {
        this(
                tag,
                makerModel,
                serialNumber,
                kind,
                stages,
                drive,
                control,
                motorPower,
                motorVoltage,
                motorCurrent,
                motorPhases,
                frequency,
                ratedSpeed,
                null,
                null,
                note,
                inService);
    }
}
