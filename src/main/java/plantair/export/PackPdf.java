package plantair.export;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.springframework.stereotype.Component;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;

/** The report of an audit pack as PDF, from templates/export/pack.html. */
@Component
class PackPdf {

    /** Latin, Greek and Cyrillic letters; embedded, so that the document looks the same everywhere. */
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final TemplateEngine templates;

    PackPdf(TemplateEngine templates) {
        this.templates = templates;
    }

    byte[] of(PackReport report, Locale locale) throws IOException {
        var context = new Context(locale);
        context.setVariable("report", report);
        String style = text("/export/pack.css");
        String page = templates
                .process("export/pack", context)
                .replaceFirst("</head>", "<style>" + style.replace("$", "\\$") + "</style></head>");
        var out = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFont(() -> open(FONT, PDDocument.class), "Body");
        builder.withHtmlContent(page, null);
        builder.toStream(out);
        builder.run();
        return out.toByteArray();
    }

    private static String text(String name) throws IOException {
        try (InputStream in = open(name, PackPdf.class)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static InputStream open(String name, Class<?> beside) {
        return Objects.requireNonNull(beside.getResourceAsStream(name), name);
    }
}
