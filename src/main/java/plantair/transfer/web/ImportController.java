package plantair.transfer.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import plantair.transfer.Import;
import plantair.transfer.Imports;
import plantair.transfer.LogColumns;
import plantair.web.NoSuchRecord;
import plantair.web.Person;

/** Upload, what was found in it, and the word to take it in. */
@Controller
final class ImportController {

    private static final int LONGEST_NAME = 100;

    private final Imports imports;
    private final MessageSource messages;

    ImportController(Imports imports, MessageSource messages) {
        this.imports = imports;
        this.messages = messages;
    }

    @GetMapping("/import")
    String page() {
        return "import/index";
    }

    /** The header of a log, to be filled in. */
    @GetMapping("/import/template.csv")
    ResponseEntity<String> template() {
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("text/csv;charset=UTF-8"))
                .header("Content-Disposition", "attachment; filename=\"plant-air-test-log.csv\"")
                .body("\uFEFF" + String.join(",", LogColumns.template()) + "\r\n");
    }

    @PostMapping("/import")
    String upload(
            @RequestParam(required = false) @Nullable MultipartFile file, Model model, HttpServletResponse response)
            throws IOException {
        if (file == null || file.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute("empty", true);
            return "import/index";
        }
        try (InputStream content = file.getInputStream()) {
            return "redirect:/import/" + imports.check(name(file), content);
        }
    }

    /** The last part of the name, without what no page should show. */
    private static String name(MultipartFile file) {
        String sent = Optional.ofNullable(file.getOriginalFilename()).orElse("");
        String name = sent.substring(Math.max(sent.lastIndexOf('/'), sent.lastIndexOf('\\')) + 1)
                .replaceAll("[\\p{Cntrl}\\p{Cf}]", "")
                .strip();
        return name.isEmpty() ? "upload" : name.substring(0, Math.min(name.length(), LONGEST_NAME));
    }

    @GetMapping("/import/{id}")
    String show(@PathVariable UUID id, Model model, Locale locale, HttpServletResponse response) {
        ImportView view = ImportView.of(find(id), messages, locale);
        if (view.isBusy()) {
            response.setHeader("Refresh", "2");
        }
        model.addAttribute("upload", view);
        return "import/show";
    }

    @PostMapping("/import/{id}")
    String record(@PathVariable UUID id, Person person) {
        imports.record(find(id).id(), person.name());
        return "redirect:/import/" + id;
    }

    private Import find(UUID id) {
        return imports.find(id).orElseThrow(() -> new NoSuchRecord("import " + id));
    }
}
