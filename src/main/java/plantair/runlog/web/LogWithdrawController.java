package plantair.runlog.web;

import java.util.Optional;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.runlog.LoggedRun;
import plantair.runlog.LoggedRunWithdrawals;
import plantair.runlog.LoggedRuns;
import plantair.runlog.RecordLog;
import plantair.web.FieldChecks;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;
import plantair.web.Person;

/** Withdraws a logged run that does not count; it stays readable. */
@Controller
final class LogWithdrawController {

    private static final String FORM = "logs/withdraw";
    private static final int LONGEST_REASON = 1_000;

    private final LoggedRuns runs;
    private final LoggedRunWithdrawals withdrawals;
    private final RecordLog record;

    LogWithdrawController(LoggedRuns runs, LoggedRunWithdrawals withdrawals, RecordLog record) {
        this.runs = runs;
        this.withdrawals = withdrawals;
        this.record = record;
    }

    @GetMapping("/logs/{id}/withdraw")
    ModelAndView ask(@PathVariable long id) {
        LoggedRun run = find(id);
        return withdrawals.findByLoggedRunId(id).isPresent()
                ? new ModelAndView("redirect:/logs/" + id)
                : new ModelAndView(FORM, "form", LogWithdrawalForm.blank()).addObject("run", run);
    }

    @PostMapping("/logs/{id}/withdraw")
    ModelAndView withdraw(
            @PathVariable long id,
            @ModelAttribute("form") LogWithdrawalForm form,
            BindingResult errors,
            Person person,
            RedirectAttributes redirect) {
        LoggedRun run = find(id);
        Optional<UUID> submission = LogFormReader.submission(form.getSubmission(), errors);
        Optional<String> reason = new FieldChecks(errors).text("reason", form.getReason(), LONGEST_REASON, true);
        if (errors.hasErrors()) {
            return new ModelAndView(FORM, HttpStatus.UNPROCESSABLE_CONTENT).addObject("run", run);
        }
        record.withdraw(id, submission.orElseThrow(), reason.orElseThrow(), person.name());
        Flash.say(redirect, "log.withdrawn");
        return new ModelAndView("redirect:/logs/" + id);
    }

    private LoggedRun find(long id) {
        return runs.findById(id).orElseThrow(() -> new NoSuchRecord("logged run " + id));
    }
}
