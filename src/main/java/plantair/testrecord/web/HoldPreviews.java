package plantair.testrecord.web;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import plantair.equipment.Compressor;
import plantair.pumpup.HoldCheck;
import plantair.pumpup.PossibleRange;
import plantair.pumpup.StaticHold;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.quantity.VolumeUnit;
import plantair.testrecord.PreviewHold;
import plantair.testrecord.TestChecks;
import plantair.testrecord.VolumeCopy;
import plantair.web.FieldChecks;
import plantair.web.Status;

/** Reads what a static hold needs of a form that is half filled in, and puts the judgement into words. */
@Component
class HoldPreviews {

    private final VolumeChoices volumes;
    private final PreviewHold preview;

    HoldPreviews(VolumeChoices volumes, PreviewHold preview) {
        this.volumes = volumes;
        this.preview = preview;
    }

    /** A judgement as a state and a sentence. */
    record Judged(Status status, String code, String text) {}

    /** Empty when something is missing, which then is among the errors. */
    Optional<Judged> judge(TestForm form, Compressor compressor, Errors errors, ResultWords words) {
        var checks = new FieldChecks(errors);
        TestChecks around = new ChecksReader(checks, errors)
                .read(form.getChecks(), compressor.facts().plate());
        List<VolumeCopy> chosen = volumes.read(form, compressor, errors);
        Optional<Entered> water = checks.positive("water", checks.optional("water", form.getWater(), VolumeUnit.class));
        Optional<Entered> barometer = checks.optional("barometer", form.getBarometer(), PressureUnit.class)
                .filter(read -> RunReader.isPossible(
                        read,
                        PossibleRange.BAROMETER,
                        entered -> AbsolutePressure.of(entered).pascals()));
        if (around.holdStart() == null || around.holdEnd() == null || around.holdWait() == null) {
            errors.reject("test.holdIncomplete");
        }
        if (errors.hasErrors() || VolumeCopy.isDrowned(chosen, water.orElse(null))) {
            return Optional.empty();
        }
        var hold = new StaticHold(
                GaugePressure.of(around.holdStart()),
                GaugePressure.of(around.holdEnd()),
                Elapsed.of(around.holdWait()),
                StaticHold.Place.TEST_VOLUME);
        Optional<HoldCheck> check = preview.of(compressor, chosen, water.orElse(null), barometer.orElse(null), hold);
        if (check.isEmpty()) {
            errors.reject("test.holdNothingToCompare");
        }
        return check.map(found -> words(found, words));
    }

    private static Judged words(HoldCheck check, ResultWords words) {
        boolean passes = check.verdict() == HoldCheck.Verdict.PASSES;
        String said = words.say(
                "test.hold.says." + check.verdict(),
                words.format().flow(check.leak()),
                words.format().percent(Math.abs(check.part())));
        var status = new Status(
                passes ? Status.Kind.GOOD : Status.Kind.ALARM, words.say("test.hold.word." + check.verdict()));
        return new Judged(status, check.verdict().name(), said);
    }
}
