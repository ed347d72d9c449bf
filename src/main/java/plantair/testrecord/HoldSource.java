package plantair.testrecord;

import java.util.List;
import java.util.Optional;
import plantair.quantity.Entered;

/** Knows falls of pressure that were measured apart from a test: the module that keeps leak tests, which stands above this one. */
public interface HoldSource {

    /**
     * A fall that may serve as the static hold of a test.
     *
     * @param start gauge pressure at first
     * @param end gauge pressure at last
     * @param waited time between them
     * @param volumes that were shut
     */
    record Hold(Entered start, Entered end, Entered waited, List<VolumeCopy> volumes) {

        public Hold {
            volumes = List.copyOf(volumes);
        }

        /** Whether these are the same receivers and pipes. */
        public boolean isOf(List<VolumeCopy> others) {
            return keys(volumes).equals(keys(others));
        }

        /** Whether the checks of a test say the same. */
        public boolean isThatOf(TestChecks checks) {
            return start.equals(checks.holdStart()) && end.equals(checks.holdEnd()) && waited.equals(checks.holdWait());
        }

        private static List<String> keys(List<VolumeCopy> volumes) {
            return volumes.stream()
                    .map(copy -> copy.kind() + " " + copy.sourceId())
                    .sorted()
                    .toList();
        }
    }

    /** The hold that a leak test gives; empty where it is none, of another machine, or not sound enough. */
    Optional<Hold> of(long leakTestId, long compressorId);
}
