package plantair.runlog.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.InputStream;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
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
import plantair.attachment.ReceivedFile;
import plantair.attachment.RefusedFile;
import plantair.attachment.SentName;
import plantair.runlog.LogText;
import plantair.runlog.RefusedLog;
import plantair.runlog.WaitingLogs;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.web.NoSuchRecord;
import plantair.web.Person;

/** First step: the file of a logger comes in. */
@Controller
final class LogUploadController {

    private static final String PAGE = "logs/new";
    private static final long MEGA = 1_000_000;

    private final PumpUpTests tests;
    private final WaitingLogs waiting;

    LogUploadController(PumpUpTests tests, WaitingLogs waiting) {
        this.tests = tests;
        this.waiting = waiting;
    }

    /** Form bean of the first step: nothing but the file, which a browser does not keep. */
    public static final class FileForm {

        public String getFile() {
            return "";
        }
    }

    @GetMapping("/tests/{id}/logs/new")
    String form(@PathVariable long id, Model model) {
        model.addAttribute("form", new FileForm());
        return page(id, model);
    }

    @PostMapping("/tests/{id}/logs/new")
    String upload(
            @PathVariable long id,
            @ModelAttribute("form") FileForm form,
            BindingResult errors,
            @RequestParam(required = false) @Nullable MultipartFile file,
            Person person,
            Model model,
            HttpServletResponse response)
            throws IOException {
        PumpUpTest test = find(id);
        if (file == null || file.isEmpty()) {
            errors.rejectValue("file", "log.refused.EMPTY");
        } else {
            UUID kept = receive(test, file, person, errors);
            if (kept != null) {
                return "redirect:/tests/" + id + "/logs/new/" + kept;
            }
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return page(id, model);
    }

    private @Nullable UUID receive(PumpUpTest test, MultipartFile file, Person person, BindingResult errors)
            throws IOException {
        try (InputStream in = file.getInputStream();
                ReceivedFile received = ReceivedFile.of(in, LogText.MOST_MEGABYTES * MEGA)) {
            LogText.of(received.path());
            return waiting.keep(test.id(), person.name(), SentName.of(file.getOriginalFilename()), received);
        } catch (RefusedLog refused) {
            errors.rejectValue("file", "log.refused." + refused.reason(), refused.arguments(), "log.refused");
        } catch (RefusedFile tooLarge) {
            errors.rejectValue("file", "log.refused.TOO_LARGE", new Object[] {LogText.MOST_MEGABYTES}, "log.refused");
        }
        return null;
    }

    private String page(long id, Model model) {
        PumpUpTest test = find(id);
        model.addAttribute("testId", id);
        model.addAttribute("tag", test.compressor().tag());
        model.addAttribute("mostMegabytes", LogText.MOST_MEGABYTES);
        model.addAttribute("mostLines", LogText.MOST_LINES);
        return PAGE;
    }

    private PumpUpTest find(long id) {
        return tests.findById(id).orElseThrow(() -> new NoSuchRecord("test " + id));
    }
}
