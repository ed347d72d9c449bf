package plantair.testrecord.web;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.paper.PaperSize;
import plantair.paper.PdfDownload;
import plantair.paper.PdfPrinter;
import plantair.paper.Printout;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.web.NoSuchRecord;
import plantair.web.UnitSet;

/** The report of a test, to be signed and kept. */
@Controller
class ReportController {

    private final PumpUpTests tests;
    private final TestViews views;
    private final ReportViews reports;
    private final PdfPrinter printer;
    private final MessageSource messages;

    ReportController(
            PumpUpTests tests, TestViews views, ReportViews reports, PdfPrinter printer, MessageSource messages) {
        this.tests = tests;
        this.views = views;
        this.reports = reports;
        this.printer = printer;
        this.messages = messages;
    }

    @GetMapping("/tests/{id:\\d+}/report")
    @Transactional(readOnly = true)
    public String show(@PathVariable long id, UnitSet units, Locale locale, Model model) {
        model.addAllAttributes(content(find(id), units, locale));
        return "tests/report";
    }

    @GetMapping("/tests/{id:\\d+}/report.pdf")
    @Transactional(readOnly = true)
    public ResponseEntity<byte[]> pdf(
            @PathVariable long id, @RequestParam(required = false) @Nullable String size, UnitSet units, Locale locale)
            throws IOException {
        PumpUpTest test = find(id);
        byte[] file = printer.print(new Printout(
                "tests/report-pdf",
                content(test, units, locale),
                List.of("/static/css/paper.css"),
                PaperSize.of(size, units),
                locale,
                reports.now()));
        return PdfDownload.of(file, "test-" + id + "-" + test.compressor().tag() + ".pdf");
    }

    private Map<String, Object> content(PumpUpTest test, UnitSet units, Locale locale) {
        TestView view = views.view(test, units, locale);
        String title = messages.getMessage(
                "report.title", new Object[] {String.valueOf(view.id()), view.tag(), view.site()}, locale);
        return Map.of("test", view, "report", reports.view(test), "title", title);
    }

    private PumpUpTest find(long id) {
        return tests.findById(id).orElseThrow(() -> new NoSuchRecord("test " + id));
    }
}
