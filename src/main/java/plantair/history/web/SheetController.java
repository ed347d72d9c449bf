package plantair.history.web;

import java.io.IOException;
import java.time.Clock;
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
import plantair.web.UnitSet;

/** The sheet to take to a machine where there is no signal. */
@Controller
class SheetController {

    private final SheetViews views;
    private final PdfPrinter printer;
    private final MessageSource messages;
    private final Clock clock;

    SheetController(SheetViews views, PdfPrinter printer, MessageSource messages, Clock clock) {
        this.views = views;
        this.printer = printer;
        this.messages = messages;
        this.clock = clock;
    }

    @GetMapping("/compressors/{id:\\d+}/sheet")
    @Transactional(readOnly = true)
    public String show(@PathVariable long id, UnitSet units, Locale locale, Model model) {
        model.addAllAttributes(content(views.of(id, units), locale));
        return "compressors/sheet";
    }

    @GetMapping("/compressors/{id:\\d+}/sheet.pdf")
    @Transactional(readOnly = true)
    public ResponseEntity<byte[]> pdf(
            @PathVariable long id, @RequestParam(required = false) @Nullable String size, UnitSet units, Locale locale)
            throws IOException {
        SheetView sheet = views.of(id, units);
        byte[] file = printer.print(new Printout(
                "compressors/sheet-pdf",
                content(sheet, locale),
                List.of("/static/css/paper.css"),
                PaperSize.of(size, units),
                locale,
                clock.instant()));
        return PdfDownload.of(file, "sheet-" + sheet.tag() + ".pdf");
    }

    private Map<String, Object> content(SheetView sheet, Locale locale) {
        String title = messages.getMessage("sheet.title", new Object[] {sheet.tag(), sheet.site()}, locale);
        return Map.of("sheet", sheet, "title", title);
    }
}
