package plantair.runlog;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.springframework.stereotype.Component;
import plantair.attachment.Pieces;
import plantair.quantity.AbsolutePressure;

/** Reads logged runs out of their files. */
@Component
public class LogFiles {

    private final Pieces pieces;

    LogFiles(Pieces pieces) {
        this.pieces = pieces;
    }

    /** The file as it was sent. */
    public byte[] bytes(LoggedRun run) {
        var bytes = new ByteArrayOutputStream();
        try {
            pieces.write(run.sha256(), bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /**
     * What it says by the choices of its record.
     *
     * @param station pressure of the place, taken off absolute readings
     */
    public LogReadings read(LoggedRun run, AbsolutePressure station) {
        try {
            return LogReadings.of(LogText.of(bytes(run), run.choices().textCode()), run.choices(), station);
        } catch (RefusedLog altered) {
            throw new IllegalStateException(
                    "the file of logged run " + run.id() + " is not what was recorded", altered);
        }
    }
}
