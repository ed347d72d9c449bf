package plantair.testrecord.web;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import plantair.pumpup.StaticHold;
import plantair.testrecord.HoldSource;
import plantair.testrecord.TestChecks;
import plantair.testrecord.VolumeCopy;
import plantair.web.FieldChecks;

/** Takes the hold of a test from a leak test of the same volume, and sees that it is that and nothing else. */
@Component
class HoldFromLeakTest {

    private static final String PATH = "checks.leakTest";

    private final ObjectProvider<HoldSource> source;

    HoldFromLeakTest(ObjectProvider<HoldSource> source) {
        this.source = source;
    }

    /** The hold that a leak test offers for a machine. */
    Optional<HoldSource.Hold> find(long leakTestId, long compressorId) {
        return source.stream()
                .flatMap(holds -> holds.of(leakTestId, compressorId).stream())
                .findFirst();
    }

    /**
     * The leak test that a form names; null when it names none or what it names is rejected.
     *
     * @param around the checks as the form has them
     * @param chosen the volume of the test
     */
    @Nullable
    Long read(String typed, TestChecks around, List<VolumeCopy> chosen, long compressorId, Errors errors) {
        Optional<Long> id = new FieldChecks(errors).id(PATH, typed, false);
        if (id.isEmpty()) {
            return null;
        }
        Optional<HoldSource.Hold> hold = find(id.get(), compressorId);
        if (around.holdPlace() == StaticHold.Place.CHECK_VALVE) {
            errors.rejectValue(PATH, "test.leakTest.checkValve");
        } else if (hold.isEmpty()) {
            errors.rejectValue(PATH, "test.leakTest.unsound", new Object[] {typed}, null);
        } else if (!hold.get().isOf(chosen)) {
            errors.rejectValue(PATH, "test.leakTest.otherVolume");
        } else if (!hold.get().isThatOf(around)) {
            errors.rejectValue(PATH, "test.leakTest.otherHold");
        }
        return id.get();
    }
}
