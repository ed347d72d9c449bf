package plantair.paper;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Objects;
import java.util.logging.Level;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.springframework.stereotype.Component;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;

/**
 * Makes a PDF of a template: with tags for those who have it read to them, its title and language, and its font inside. The
 * same page made at the same moment gives the same bytes.
 */
@Component
public class PdfPrinter {

    /** Latin, Greek and Cyrillic letters; embedded, so that the document looks the same everywhere. */
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private static final DateTimeFormatter PDF_TIME =
            DateTimeFormatter.ofPattern("'D:'yyyyMMddHHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final TemplateEngine templates;

    PdfPrinter(TemplateEngine templates) {
        XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.WARNING));
        this.templates = templates;
    }

    /** The file. */
    public byte[] print(Printout printout) throws IOException {
        var builder = new PdfRendererBuilder();
        builder.useFont(() -> open(FONT, PDDocument.class), "Body");
        builder.usePdfUaAccessibility(true);
        builder.withProducer("Plant Air Records");
        builder.withHtmlContent(page(printout), null);
        var out = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            date(document, printout.madeAt());
            document.setDocumentId(printout.madeAt().toEpochMilli());
            document.save(out);
        }
        return out.toByteArray();
    }

    private String page(Printout printout) throws IOException {
        var context = new Context(printout.locale());
        context.setVariables(printout.variables());
        context.setVariable("pdf", true);
        var style = new StringBuilder("@page { size: " + printout.size().css() + "; }\n");
        style.append(text("/paper/pdf.css"));
        for (String name : printout.styles()) {
            style.append(text(name));
        }
        return templates
                .process(printout.template(), context)
                .replace("</head>", "<style>" + style + "</style></head>");
    }

    /** The library writes the time of the computer; here it is the one that was told. */
    private static void date(PDDocument document, Instant at) throws IOException {
        COSDictionary information = document.getDocumentInformation().getCOSObject();
        information.setString(COSName.CREATION_DATE, PDF_TIME.format(at));
        information.setString(COSName.MOD_DATE, PDF_TIME.format(at));
        PDMetadata metadata = document.getDocumentCatalog().getMetadata();
        String text = new String(metadata.toByteArray(), StandardCharsets.UTF_8)
                .replaceAll("(<xmp:(?:Create|Modify)Date>)[^<]*", "$1" + DateTimeFormatter.ISO_INSTANT.format(at));
        metadata.importXMPMetadata(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String text(String name) throws IOException {
        try (InputStream in = open(name, PdfPrinter.class)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static InputStream open(String name, Class<?> beside) {
        return Objects.requireNonNull(beside.getResourceAsStream(name), name);
    }
}
