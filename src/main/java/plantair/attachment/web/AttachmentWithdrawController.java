package plantair.attachment.web;

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
import plantair.attachment.AttachFile;
import plantair.attachment.AttachedFile;
import plantair.attachment.AttachedFiles;
import plantair.attachment.Attachment;
import plantair.attachment.Attachments;
import plantair.web.FieldChecks;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;
import plantair.web.Person;

/** One photo or paper, and its withdrawal. */
@Controller
final class AttachmentWithdrawController {

    private static final String FORM = "attachments/withdraw";
    private static final int LONGEST_REASON = 1000;

    private final Attachments attachments;
    private final AttachedFiles files;
    private final AttachFile attach;

    AttachmentWithdrawController(Attachments attachments, AttachedFiles files, AttachFile attach) {
        this.attachments = attachments;
        this.files = files;
        this.attach = attach;
    }

    @GetMapping("/attachments/{id:\\d+}")
    ModelAndView show(@PathVariable long id) {
        return page(find(id), new ModelAndView("attachments/show"));
    }

    @GetMapping("/attachments/{id:\\d+}/withdraw")
    ModelAndView ask(@PathVariable long id) {
        AttachedFile file = find(id);
        return file.withdrawn() == null
                ? page(file, new ModelAndView(FORM, "form", AttachmentWithdrawalForm.blank()))
                : new ModelAndView("redirect:/attachments/" + id);
    }

    @PostMapping("/attachments/{id:\\d+}/withdraw")
    ModelAndView withdraw(
            @PathVariable long id,
            @ModelAttribute("form") AttachmentWithdrawalForm form,
            BindingResult errors,
            Person person,
            RedirectAttributes redirect) {
        AttachedFile file = find(id);
        Optional<UUID> submission = SentKey.read(form.getSubmission(), errors);
        Optional<String> reason = new FieldChecks(errors).text("reason", form.getReason(), LONGEST_REASON, true);
        if (errors.hasErrors()) {
            return page(file, new ModelAndView(FORM, HttpStatus.UNPROCESSABLE_CONTENT));
        }
        attach.withdraw(id, submission.orElseThrow(), reason.orElseThrow(), person.name());
        Flash.say(redirect, "attachment.withdrawn");
        return new ModelAndView("redirect:/attachments/" + id);
    }

    private AttachedFile find(long id) {
        Attachment attachment = attachments.findById(id).orElseThrow(() -> new NoSuchRecord("attachment " + id));
        return files.of(attachment.to(), attachment.objectId()).stream()
                .filter(file -> file.id() == id)
                .findFirst()
                .orElseThrow();
    }

    private static ModelAndView page(AttachedFile file, ModelAndView page) {
        return page.addObject("file", file).addObject("back", file.to().page(file.objectId()));
    }
}
