package plantair.due;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What can be due. */
public enum DueKind {
    /** A pump-up test of a compressor; a quarter where the site says nothing: common practice, no source. */
    TEST(true, 3),
    /** A calibration of an instrument; its certificate and its own interval decide. */
    CALIBRATION(false, null),
    /** A test of a relief valve. */
    VALVE_TEST(true, null),
    /** The end of a certificate or permit of a receiver; its own last day decides. */
    CERTIFICATE(false, null),
    /** A look at a receiver from outside. */
    EXTERNAL(true, null),
    /** A look at a receiver from inside. */
    INTERNAL(true, null),
    /** The wall thickness of a receiver. */
    THICKNESS(true, null),
    /** A pressure test of a receiver with water. */
    HYDROSTATIC(true, null);

    private final boolean bySite;
    private final @Nullable Integer usualMonths;

    DueKind(boolean bySite, @Nullable Integer usualMonths) {
        this.bySite = bySite;
        this.usualMonths = usualMonths;
    }

    /** Whether a site sets its interval. */
    public boolean isBySite() {
        return bySite;
    }

    /** What the trade does where a site says nothing; null where we offer none, as for everything that a law may ask. */
    public @Nullable Integer usualMonths() {
        return usualMonths;
    }

    /** Those whose interval a site sets. */
    public static List<DueKind> setBySites() {
        return Stream.of(values()).filter(DueKind::isBySite).toList();
    }
}
