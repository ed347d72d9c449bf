package plantair.testrecord;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.PumpUpReadings;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;

/** What makes readings impossible together though each is possible by itself. */
public final class DraftChecks {

    private DraftChecks() {}

    /** True when a gauge pressure would be at or below perfect vacuum at the station pressure of the test. */
    public static boolean isBelowVacuum(Entered gauge, TestConditions conditions) {
        AbsolutePressure station = TestReadings.station(conditions).pressure();
        return !(GaugePressure.of(gauge).pascals() > -station.pascals());
    }

    /** True when the water left inside would fill the whole volume. */
    public static boolean isDrowned(List<VolumeCopy> volumes, @Nullable Entered water) {
        return !PumpUpReadings.holdsAir(TestReadings.volumeParts(volumes, water));
    }
}
