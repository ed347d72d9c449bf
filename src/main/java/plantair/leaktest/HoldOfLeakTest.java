package plantair.leaktest;

import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.pumpup.StaticHold;
import plantair.pumpup.StaticHold.Place;
import plantair.quantity.DurationUnit;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.quantity.Rounded;
import plantair.testrecord.HoldSource;

/** Gives a fall of pressure in a test volume as the hold of a pump-up test. */
@Service
@Transactional(readOnly = true)
public class HoldOfLeakTest implements HoldSource {

    private static final int DIGITS_OF_A_FIT = 4;

    private final LeakTests tests;

    HoldOfLeakTest(LeakTests tests) {
        this.tests = tests;
    }

    @Override
    public Optional<Hold> of(long leakTestId, long compressorId) {
        return tests.findById(leakTestId)
                .filter(test -> !test.entry().withdrawn())
                .filter(test -> tests.findByEntrySupersedesId(leakTestId).isEmpty())
                .map(LeakTest::draft)
                .filter(test -> Long.valueOf(compressorId).equals(test.compressorId()))
                .flatMap(test -> hold(test, LeakResult.of(test)));
    }

    /**
     * Whether a test may serve as a hold: the fall of a test volume that is told and nothing but a leak, choked to the end,
     * not through the check valve, in receivers and pipes of the register.
     */
    public static boolean isSound(LeakTestDraft test, LeakResult result) {
        return hold(test, result).isPresent();
    }

    private static Optional<Hold> hold(LeakTestDraft test, LeakResult result) {
        if (test.place() != LeakPlace.TEST_VOLUME || test.volumes().isEmpty()) {
            return Optional.empty();
        }
        Optional<Hold> byTwo = result.two()
                .filter(two -> two.readings().isChoked() && two.decay().isTold())
                .map(two -> new Hold(
                        test.readings().get(0).pressure(),
                        test.readings().get(1).pressure(),
                        test.readings().get(1).atTime(),
                        test.volumes()));
        return byTwo.or(() -> result.fall()
                .flatMap(fall -> fall.outcome().fall())
                .flatMap(line -> line.asHold(Place.TEST_VOLUME))
                .map(hold -> fitted(test, hold)));
    }

    /** The ends of the fitted line, in the unit of the readings, finer than any gauge. */
    private static Hold fitted(LeakTestDraft test, StaticHold hold) {
        PressureUnit unit = (PressureUnit) test.readings().get(0).pressure().unit();
        return new Hold(
                entered(hold.start(), unit),
                entered(hold.end(), unit),
                new Entered(Rounded.places(hold.waited().seconds(), 1), DurationUnit.SECOND),
                test.volumes());
    }

    private static Entered entered(GaugePressure pressure, PressureUnit unit) {
        return new Entered(Rounded.places(pressure.in(unit), DIGITS_OF_A_FIT), unit);
    }
}
