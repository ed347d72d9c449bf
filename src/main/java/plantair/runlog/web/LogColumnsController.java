package plantair.runlog.web;

import java.io.IOException;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.pumpup.PressureRise;
import plantair.runlog.LogChoices;
import plantair.runlog.LogGuess;
import plantair.runlog.LogReadings;
import plantair.runlog.LogText;
import plantair.runlog.LoggedRunDraft;
import plantair.runlog.RecordLog;
import plantair.runlog.RefusedLog;
import plantair.runlog.WaitingLogs;
import plantair.runlog.WaitingLogs.Waiting;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultProjection;
import plantair.web.FieldChecks;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitSet;

/** Second step: how the file of a logger is read, what comes out of that, and its recording. */
@Controller
final class LogColumnsController {

    private static final int LONGEST_NOTE = 2_000;

    private final PumpUpTests tests;
    private final WaitingLogs waiting;
    private final LogFormReader reader;
    private final LogFormPage page;
    private final RecordLog record;

    LogColumnsController(
            PumpUpTests tests, WaitingLogs waiting, LogFormReader reader, LogFormPage page, RecordLog record) {
        this.tests = tests;
        this.waiting = waiting;
        this.reader = reader;
        this.page = page;
        this.record = record;
    }

    @GetMapping("/tests/{id}/logs/new/{key}")
    ModelAndView form(
            @PathVariable long id, @PathVariable UUID key, UnitSet units, Person person, RedirectAttributes redirect)
            throws IOException {
        PumpUpTest test = find(id);
        Optional<Waiting> found = waiting.find(key, id, person.name());
        if (found.isEmpty()) {
            return gone(id, redirect);
        }
        try (Waiting log = found.get()) {
            return form(test, log, units);
        }
    }

    private ModelAndView form(PumpUpTest test, Waiting log, UnitSet units) throws IOException {
        LogText text = text(log);
        LogChoices guess = LogGuess.of(text, units.pressure());
        LogReadings readings = LogReadings.of(text, guess, ResultProjection.stationPressure(test));
        LogForm form = LogForm.of(guess);
        return page.fill(new ModelAndView("logs/columns", "form", form), test, log, form)
                .addObject("preview", page.preview(text, guess, readings, units));
    }

    @PostMapping("/tests/{id}/logs/new/{key}")
    ModelAndView save(
            @PathVariable long id,
            @PathVariable UUID key,
            @ModelAttribute("form") LogForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String action,
            UnitSet units,
            Person person,
            RedirectAttributes redirect)
            throws IOException {
        PumpUpTest test = find(id);
        Optional<Waiting> found = waiting.find(key, id, person.name());
        if (found.isEmpty()) {
            return gone(id, redirect);
        }
        try (Waiting log = found.get()) {
            boolean anywhere = action.equals("anywhere");
            if (anywhere) {
                form.setAnywhere("true");
            }
            return save(test, log, form, errors, anywhere || action.equals("look"), units, person, redirect);
        }
    }

    private ModelAndView save(
            PumpUpTest test,
            Waiting log,
            LogForm form,
            BindingResult errors,
            boolean look,
            UnitSet units,
            Person person,
            RedirectAttributes redirect)
            throws IOException {
        LogText text = text(log);
        Optional<LogChoices> choices = reader.choices(form, text.code(), errors);
        Optional<LogReadings> readings =
                choices.map(chosen -> LogReadings.of(text, chosen, ResultProjection.stationPressure(test)));
        if (!look) {
            readings.ifPresent(read -> check(read, form, errors));
            Optional<LoggedRunDraft> draft = draft(test, log, form, choices.orElse(null), errors);
            if (draft.isPresent()) {
                record.record(draft.get(), log.file(), person.name());
                Flash.say(redirect, "log.saved");
                return new ModelAndView("redirect:/tests/" + test.id() + "/curve");
            }
        }
        var again = new ModelAndView(
                "logs/columns", look && !errors.hasErrors() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT);
        return page.fill(again, test, log, form)
                .addObject("preview", page.preview(text, form, choices, readings, units));
    }

    /** What would be recorded for nothing, or wrongly. */
    private static void check(LogReadings readings, LogForm form, BindingResult errors) {
        int told = readings.faulty() - readings.backwards();
        if (readings.backwards() > 0) {
            errors.rejectValue("timeColumn", "log.backwards", new Object[] {readings.backwards()}, "log.backwards");
        } else if (told > 0 && !form.getLeaveOut().equals("true")) {
            errors.rejectValue("skippedLines", "log.faulty", new Object[] {told}, "log.faulty");
        } else if (PressureRise.of(readings.points()).points().size() < RiseView.FEWEST) {
            errors.rejectValue("pressureColumn", "log.noRise", new Object[] {RiseView.FEWEST}, "log.noRise");
        }
    }

    private Optional<LoggedRunDraft> draft(
            PumpUpTest test, Waiting log, LogForm form, @Nullable LogChoices choices, BindingResult errors) {
        Optional<UUID> submission = LogFormReader.submission(form.getSubmission(), errors);
        InstrumentCopy logger =
                reader.logger(form, test.performedAt().atZone(test.zone()).toLocalDate(), errors);
        Optional<String> note = new FieldChecks(errors).text("note", form.getNote(), LONGEST_NOTE, false);
        if (errors.hasErrors() || choices == null) {
            return Optional.empty();
        }
        return Optional.of(new LoggedRunDraft(
                submission.orElseThrow(), test.id(), log.fileName(), choices, logger, note.orElse("")));
    }

    private static LogText text(Waiting log) throws IOException {
        try {
            return LogText.of(log.file().path());
        } catch (RefusedLog impossible) {
            throw new IllegalStateException("it was looked at when it came in", impossible);
        }
    }

    private static ModelAndView gone(long id, RedirectAttributes redirect) {
        Flash.say(redirect, "log.gone");
        return new ModelAndView("redirect:/tests/" + id + "/logs/new");
    }

    private PumpUpTest find(long id) {
        return tests.findById(id).orElseThrow(() -> new NoSuchRecord("test " + id));
    }
}
