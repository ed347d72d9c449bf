package plantair.backup.web;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.springframework.core.io.FileSystemResource;
import org.springframework.core.io.Resource;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.backup.BackupFailed;
import plantair.backup.BackupFile;
import plantair.backup.BackupKind;
import plantair.backup.Backups;
import plantair.backup.Schedule;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;

/** Lists the backups, makes one, and hands them out. */
@Controller
final class BackupController {

    private static final String PAGE = "backup/index";
    private static final int ROWS = 25;

    private final Backups backups;
    private final Schedule schedule;

    BackupController(Backups backups, Schedule schedule) {
        this.backups = backups;
        this.schedule = schedule;
    }

    @GetMapping("/backup")
    String list(@RequestParam(defaultValue = "1") int page, Model model) throws IOException {
        List<BackupFile> files = backups.list();
        var paging = new Paging("/backup", page, ROWS, files.size());
        model.addAttribute("paging", paging);
        model.addAttribute(
                "files",
                files.stream()
                        .skip((long) paging.index() * ROWS)
                        .limit(ROWS)
                        .map(BackupRow::of)
                        .toList());
        model.addAttribute("schedule", schedule);
        model.addAttribute("ours", backups.areOurs());
        model.addAttribute("folder", backups.folder());
        backups.failure().ifPresent(failure -> {
            model.addAttribute("failure", failure);
            model.addAttribute("failedAt", BackupRow.WHEN.format(failure.at()));
        });
        return PAGE;
    }

    /** Makes one now; a failure is told on the page. */
    @PostMapping("/backup")
    ModelAndView make(RedirectAttributes redirect, Model model) throws IOException {
        if (!backups.areOurs()) {
            return refused(HttpStatus.CONFLICT, model);
        }
        try {
            backups.make(BackupKind.BY_HAND);
            Flash.say(redirect, "backup.made");
            return new ModelAndView("redirect:/backup");
        } catch (BackupFailed failed) {
            boolean full = backups.failure().filter(Backups.Failure::diskFull).isPresent();
            return refused(full ? HttpStatus.INSUFFICIENT_STORAGE : HttpStatus.INTERNAL_SERVER_ERROR, model);
        }
    }

    private ModelAndView refused(HttpStatus status, Model model) throws IOException {
        return new ModelAndView(list(1, model), model.asMap(), status);
    }

    @GetMapping("/backup/{name}")
    ResponseEntity<Resource> download(@PathVariable String name) throws IOException {
        Path file = backups.file(name).orElseThrow(() -> new NoSuchRecord("backup " + name));
        return ResponseEntity.ok()
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .contentType(MediaType.parseMediaType("application/gzip"))
                .body(new FileSystemResource(file));
    }
}
