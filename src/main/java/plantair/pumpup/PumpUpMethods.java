package plantair.pumpup;

import java.util.List;

/** Every method there has been, oldest first. */
public final class PumpUpMethods {

    private static final List<PumpUpMethod> ALL = List.of(new PumpUpMethodV1(Compressibility.DRY_AIR));

    private PumpUpMethods() {}

    /** The method for new tests. */
    public static PumpUpMethod current() {
        return ALL.get(ALL.size() - 1);
    }

    /**
     * The method with which a test was recorded.
     *
     * @throws IllegalArgumentException when there is none of that version
     */
    public static PumpUpMethod version(String version) {
        return ALL.stream()
                .filter(method -> method.version().equals(version))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no method " + version));
    }
}
