package plantair.guided.web;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;
import plantair.equipment.Compressor;
import plantair.guided.MachineFigures;
import plantair.quantity.VolumeUnit;
import plantair.testrecord.GuideLog;
import plantair.web.FieldChecks;

/** Reads what a guided test has beside its readings; what cannot be read is rejected beside its field. */
final class GuideReader {

    private static final int LONGEST_STEPS = 7000;

    private final Errors errors;
    private final FieldChecks checks;

    GuideReader(Errors errors) {
        this.errors = errors;
        this.checks = new FieldChecks(errors);
    }

    /** What was read of the machine. */
    MachineFigures figures(FiguresForm form) {
        return new FiguresReader("figures.", errors).read(form);
    }

    GuideLog log(GuidedForm form, Compressor compressor) {
        String tag = form.getTagRead().strip();
        if (!tag.isEmpty() && !tag.equalsIgnoreCase(compressor.tag())) {
            errors.rejectValue("tagRead", "guided.otherMachine", new Object[] {tag, compressor.tag()}, null);
        }
        return new GuideLog(
                checks.optional("drained", form.getDrained(), VolumeUnit.class).orElse(null),
                checks.optionalChoice("afterStop", form.getAfterStop(), GuideLog.AfterStop.class)
                        .orElse(null),
                steps(form),
                moment(form.getDeviceRecordedAt()),
                offset(form.getDeviceOffsetMs()));
    }

    private @Nullable String steps(GuidedForm form) {
        Optional<String> timed = checks.text("steps", form.getSteps(), LONGEST_STEPS, false);
        String ticked = Stream.of(
                        ticks("prepared", form.getPrepared()),
                        ticks("isolated", form.getIsolated()),
                        ticks("putBack", form.getPutBack()))
                .flatMap(List::stream)
                .map(Tick::name)
                .collect(Collectors.joining(", "));
        String tag = form.getTagRead().isBlank()
                ? ""
                : "tag read: " + form.getTagRead().strip();
        String all = Stream.of(tag, ticked.isEmpty() ? "" : "ticked: " + ticked, timed.orElse(""))
                .filter(line -> !line.isEmpty())
                .collect(Collectors.joining("\n"));
        return all.isEmpty() ? null : all;
    }

    private List<Tick> ticks(String path, List<String> chosen) {
        return chosen.stream()
                .flatMap(code -> checks.optionalChoice(path, code, Tick.class).stream())
                .distinct()
                .toList();
    }

    /** Made by a script; what it cannot have made is left out. */
    private static @Nullable Instant moment(String sent) {
        try {
            return sent.isBlank() ? null : Instant.parse(sent);
        } catch (DateTimeException notByOurScript) {
            return null;
        }
    }

    private static @Nullable Integer offset(String sent) {
        return sent.matches("-?\\d{1,9}") ? Integer.valueOf(sent) : null;
    }
}
