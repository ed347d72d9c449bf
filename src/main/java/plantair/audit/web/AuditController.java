package plantair.audit.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import plantair.audit.AuditCheck;
import plantair.audit.AuditFile;
import plantair.register.Changes;

/** The check of the records, and the file with which others can make it. */
@Controller
final class AuditController {

    private final AuditCheck check;
    private final AuditFile file;
    private final Changes changes;
    private final Clock clock;

    AuditController(AuditCheck check, AuditFile file, Changes changes, Clock clock) {
        this.check = check;
        this.file = file;
        this.changes = changes;
        this.clock = clock;
    }

    @GetMapping("/audit")
    String page(Model model) {
        model.addAttribute("end", changes.end());
        return "audit/index";
    }

    @GetMapping("/audit/check")
    String check(Model model) {
        model.addAttribute("end", changes.end());
        model.addAttribute("report", check.check(done -> {}));
        model.addAttribute("checkedAt", clock.instant().toString());
        return "audit/index";
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
