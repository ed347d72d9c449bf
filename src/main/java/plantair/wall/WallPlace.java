package plantair.wall;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Length;

/**
 * The readings of one place, and what they come to. Of the loss since the reading before and the loss since the first
 * one, the faster counts, as inspection codes ask for the greater of short-term and long-term rate (API 510, from memory).
 *
 * @param readings of different days, oldest first; at least one
 * @param required least thickness that the vessel needs there; null when it is not known
 */
public record WallPlace(
        List<WallReading> readings, @Nullable Length required) {

    /** @throws IllegalArgumentException when there is no reading, or two of one day */
    public WallPlace {
        readings =
                readings.stream().sorted(Comparator.comparing(WallReading::day)).toList();
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("no reading");
        }
        for (int i = 1; i < readings.size(); i++) {
            if (readings.get(i).day().equals(readings.get(i - 1).day())) {
                throw new IllegalArgumentException(
                        "two readings of " + readings.get(i).day());
            }
        }
    }

    /** The newest reading. */
    public WallReading last() {
        return readings.get(readings.size() - 1);
    }

    /** The loss that counts: the faster of the told ones, else that since the reading before; empty with one reading. */
    public Optional<WallLoss> loss() {
        int size = readings.size();
        if (size < 2) {
            return Optional.empty();
        }
        WallLoss recent = new WallLoss(readings.get(size - 2), last());
        WallLoss whole = new WallLoss(readings.get(0), last());
        return Stream.of(recent, whole)
                .filter(loss -> loss.code() == WallCode.THINNING)
                .max(Comparator.comparingDouble(WallLoss::rate))
                .or(() -> Optional.of(recent));
    }

    /** What the readings say. */
    public WallCode code() {
        return loss().map(WallLoss::code).orElse(WallCode.ONE_READING);
    }

    /** Whether the newest reading is below what is required; false when that is not known. */
    public boolean isBelowRequired() {
        return required != null && last().thickness().metres() < required.metres();
    }

    /** What is left; empty where no loss can be told or the required thickness is not known. */
    public Optional<RemainingLife> life() {
        Length least = required;
        return least == null
                ? Optional.empty()
                : loss().filter(loss -> loss.code() == WallCode.THINNING).map(loss -> RemainingLife.of(loss, least));
    }

    /** The shortest life of some places; empty where none has one. */
    public static Optional<RemainingLife> least(List<WallPlace> places) {
        return places.stream()
                .map(WallPlace::life)
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(RemainingLife::years));
    }
}
