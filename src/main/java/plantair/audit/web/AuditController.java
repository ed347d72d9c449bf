package plantair.audit.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import plantair.audit.AuditFile;
import plantair.audit.AuditJob;
import plantair.register.Changes;

/** The check of the records, and the file with which others can make it. */
@Controller
final class AuditController {

    /** A small plant is checked by then, and the page shows the result at once. */
    private static final Duration PATIENCE = Duration.ofSeconds(2);

    private static final String SECONDS_TO_LOOK_AGAIN = "2";

    private final AuditJob job;
    private final AuditFile file;
    private final Changes changes;
    private final Clock clock;

    AuditController(AuditJob job, AuditFile file, Changes changes, Clock clock) {
        this.job = job;
        this.file = file;
        this.changes = changes;
        this.clock = clock;
    }

    @GetMapping("/audit")
    String page(Model model, HttpServletResponse response) {
        AuditJob.State state = job.state();
        if (state.isRunning()) {
            response.setHeader("Refresh", SECONDS_TO_LOOK_AGAIN);
        }
        model.addAttribute("end", changes.end().orElse(null));
        model.addAttribute("job", state);
        model.addAttribute("read", state.read());
        return "audit/index";
    }

    @PostMapping("/audit/check")
    String check() {
        job.start(PATIENCE);
        return "redirect:/audit";
    }

    @GetMapping("/audit/file.zip")
    void file(HttpServletResponse response) throws IOException {
        response.setContentType("application/zip");
        response.setHeader(
                HttpHeaders.CONTENT_DISPOSITION,
                ContentDisposition.attachment()
                        .filename("plant-air-audit-" + LocalDate.now(clock) + ".zip")
                        .build()
                        .toString());
        file.write(response.getOutputStream());
    }
}
