package plantair.attachment.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.attachment.AttachFile;
import plantair.attachment.AttachedFiles;
import plantair.attachment.AttachedObjects;
import plantair.attachment.AttachedTo;
import plantair.attachment.AttachmentDraft;
import plantair.attachment.FileCheck;
import plantair.attachment.FileFormat;
import plantair.attachment.ReceivedFile;
import plantair.attachment.RefusedFile;
import plantair.attachment.SentName;
import plantair.web.FieldChecks;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;
import plantair.web.Person;

/** The photos and papers of a record, and one more. */
@Controller
final class AttachmentController {

    private static final String PAGE = "attachments/list";
    private static final int LONGEST_DESCRIPTION = 300;
    private static final long MEGA = 1_000_000;

    private final AttachFile attach;
    private final AttachedFiles files;
    private final AttachedObjects objects;
    private final FileCheck check;
    private final long mostMegabytes;

    AttachmentController(
            AttachFile attach,
            AttachedFiles files,
            AttachedObjects objects,
            FileCheck check,
            @Value("${plantair.attachments.most-megabytes:10}") long mostMegabytes) {
        this.attach = attach;
        this.files = files;
        this.objects = objects;
        this.check = check;
        this.mostMegabytes = mostMegabytes;
    }

    @GetMapping("/attachments/of/{kind}/{object}")
    String list(@PathVariable String kind, @PathVariable long object, Model model) {
        model.addAttribute("form", AttachmentForm.blank());
        return page(kind(kind), object, model);
    }

    @PostMapping("/attachments/of/{kind}/{object}")
    String attach(
            @PathVariable String kind,
            @PathVariable long object,
            @ModelAttribute("form") AttachmentForm form,
            BindingResult errors,
            @RequestParam(required = false) @Nullable MultipartFile file,
            Person person,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect)
            throws IOException {
        AttachedTo to = kind(kind);
        objects.name(to, object);
        Optional<UUID> submission = SentKey.read(form.getSubmission(), errors);
        Optional<String> description =
                new FieldChecks(errors).text("description", form.getDescription(), LONGEST_DESCRIPTION, true);
        if (file == null || file.isEmpty()) {
            errors.rejectValue("file", "attachment.refused.EMPTY");
        } else {
            Sent sent = new Sent(file, person.name(), errors, response);
            receive(sent, to, object, submission, description);
        }
        if (errors.hasErrors()) {
            if (response.getStatus() == HttpStatus.OK.value()) {
                response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            }
            return page(to, object, model);
        }
        Flash.say(redirect, "attachment.saved");
        return "redirect:/attachments/of/" + to + "/" + object;
    }

    private record Sent(MultipartFile file, String by, BindingResult errors, HttpServletResponse response) {

        void refuse(RefusedFile refused) {
            String code = "attachment.refused." + refused.reason();
            errors.rejectValue("file", code, refused.arguments().toArray(), code);
            if (refused.reason() == RefusedFile.Reason.TOO_LARGE) {
                response.setStatus(HttpStatus.CONTENT_TOO_LARGE.value());
            }
        }
    }

    /** Looks at the file in any case, so that all that is wrong is told at once. */
    private void receive(Sent sent, AttachedTo to, long object, Optional<UUID> submission, Optional<String> description)
            throws IOException {
        try (InputStream in = sent.file().getInputStream();
                ReceivedFile received = ReceivedFile.of(in, mostMegabytes * MEGA)) {
            FileFormat format = check.check(received.path());
            if (!sent.errors().hasErrors()) {
                var draft = new AttachmentDraft(
                        submission.orElseThrow(),
                        to,
                        object,
                        SentName.of(sent.file().getOriginalFilename()),
                        description.orElseThrow());
                attach.attach(draft, received, format, sent.by());
            }
        } catch (RefusedFile refused) {
            sent.refuse(refused);
        }
    }

    private String page(AttachedTo to, long object, Model model) {
        model.addAttribute("name", objects.name(to, object));
        model.addAttribute("back", to.page(object));
        model.addAttribute("papers", new PapersView(to, object, files.of(to, object)));
        model.addAttribute("mostMegabytes", mostMegabytes);
        return PAGE;
    }

    private static AttachedTo kind(String name) {
        return AttachedTo.byName(name).orElseThrow(() -> new NoSuchRecord("kind " + name));
    }
}
