package plantair.guided.web;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/**
 * The script that lets guided pages open without a signal. It names the files of this version and their digest, so that
 * a browser takes it anew whenever one of them changed.
 */
@Controller
class WorkerController {

    /** What a guided page loads. */
    static final List<String> SCRIPTS = List.of(
            "leave",
            "guided-store",
            "guided-signal",
            "guided-form",
            "guided-draft",
            "guided-queue",
            "guided-timer",
            "guided-runs",
            "guided-waits",
            "guided-steps",
            "guided-preview",
            "guided-finish",
            "guided-start");

    private static final String PICO = "/webjars/picocss__pico/css/pico.min.css";
    private static final String WORKER = "js/guided-worker.js";

    private final String script;

    WorkerController() throws IOException, NoSuchAlgorithmException {
        List<String> own = Stream.concat(
                        Stream.of("/css/app.css", "/css/guided.css", "/favicon.svg"),
                        SCRIPTS.stream().map(name -> "/js/" + name + ".js"))
                .toList();
        var digest = MessageDigest.getInstance("SHA-256");
        for (String file : own) {
            digest.update(read("static" + file));
        }
        byte[] worker = read("static/" + WORKER);
        digest.update(worker);
        String version = HexFormat.of().formatHex(digest.digest()).substring(0, 16);
        String files = Stream.concat(own.stream(), Stream.of(PICO))
                .map(file -> "\"" + file + "\"")
                .collect(Collectors.joining(", "));
        script = "const VERSION = \"" + version + "\";\nconst FILES = [" + files + "];\n"
                + new String(worker, StandardCharsets.UTF_8);
    }

    private static byte[] read(String path) throws IOException {
        try (InputStream in = new ClassPathResource(path).getInputStream()) {
            return in.readAllBytes();
        }
    }

    @GetMapping("/sw.js")
    ResponseEntity<String> worker() {
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("text/javascript;charset=UTF-8"))
                .body(script);
    }
}
