package plantair.export;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plantair.equipment.RatingEntry;
import plantair.quantity.Entered;
import plantair.testrecord.VolumeCopy;

/** What a test copied of the registers, as one cell of tests.csv. */
public final class CopyText {

    private CopyText() {}

    /** Receivers and pipe pieces as typed. */
    public static String volumes(List<VolumeCopy> copies) {
        return copies.stream().map(CopyText::volume).collect(Collectors.joining("; "));
    }

    /** Rating points as typed. */
    public static String ratings(List<RatingEntry> ratings) {
        return ratings.stream()
                .map(rating -> rating.flow().text() + " at " + rating.pressure().text() + " gauge, " + rating.basis())
                .collect(Collectors.joining("; "));
    }

    private static String volume(VolumeCopy copy) {
        String size = copy.volume() != null
                ? copy.volume().text()
                : "length " + textOf(copy.length()) + ", bore " + textOf(copy.bore());
        String mawp = copy.mawp() == null ? "" : ", MAWP " + copy.mawp().text();
        return copy.kind() + " " + copy.label() + ": " + size + mawp;
    }

    private static String textOf(@Nullable Entered entered) {
        return entered == null ? "" : entered.text();
    }
}
