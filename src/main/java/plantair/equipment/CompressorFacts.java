package plantair.equipment;

import java.util.List;
import plantair.register.FactLines;
import plantair.register.Facts;

/**
 * What the register says of a compressor.
 *
 * @param plate its plate and kind
 * @param ratings its rating points, may be empty
 */
public record CompressorFacts(CompressorPlate plate, List<RatingEntry> ratings) implements Facts {

    public CompressorFacts {
        ratings = List.copyOf(ratings);
    }

    @Override
    public String name() {
        return plate.tag();
    }

    @Override
    public String lines() {
        var lines = new FactLines()
                .add("tag", plate.tag())
                .add("maker and model", plate.makerModel())
                .add("serial number", plate.serialNumber())
                .add("kind", plate.kind())
                .add("stages", plate.stages())
                .add("drive", plate.drive())
                .add("control", plate.control())
                .add("motor power", plate.motorPower())
                .add("motor voltage", plate.motorVoltage())
                .add("motor current", plate.motorCurrent())
                .add("motor phases", plate.motorPhases())
                .add("frequency", plate.frequency())
                .add("rated speed", plate.ratedSpeed())
                .add("displacement", plate.displacement());
        for (RatingEntry rating : ratings) {
            lines.add("rating", rating.flow() + " at " + rating.pressure() + " gauge, " + rating.basis());
        }
        return lines.add("loaded hours a year", plate.loadedHours())
                .add("in service", plate.inService())
                .add("note", plate.note())
                .toString();
    }
}
