package plantair.equipment.web;

import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.equipment.Receiver;
import plantair.equipment.Receivers;
import plantair.paper.PaperSize;
import plantair.paper.PdfDownload;
import plantair.paper.PdfPrinter;
import plantair.paper.PrintedAddress;
import plantair.paper.Printout;
import plantair.paper.QrCode;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.NoSuchRecord;
import plantair.web.UnitSet;

/** Labels with a QR code: of one machine, and of all machines and receivers in service at a site. */
@Controller
final class LabelController {

    private final Compressors compressors;
    private final Receivers receivers;
    private final Sites sites;
    private final PrintedAddress address;
    private final PdfPrinter printer;
    private final MessageSource messages;
    private final Clock clock;

    LabelController(
            Compressors compressors,
            Receivers receivers,
            Sites sites,
            PrintedAddress address,
            PdfPrinter printer,
            MessageSource messages,
            Clock clock) {
        this.compressors = compressors;
        this.receivers = receivers;
        this.sites = sites;
        this.address = address;
        this.printer = printer;
        this.messages = messages;
        this.clock = clock;
    }

    @GetMapping("/compressors/{id:\\d+}/label")
    String one(@PathVariable long id, Locale locale, Model model) {
        return page(ofMachine(id, locale), "/compressors/" + id, "/compressors/" + id + "/label.pdf", model);
    }

    @GetMapping("/compressors/{id:\\d+}/label.pdf")
    ResponseEntity<byte[]> onePdf(
            @PathVariable long id, @RequestParam(required = false) @Nullable String size, UnitSet units, Locale locale)
            throws IOException {
        return pdf(ofMachine(id, locale), PaperSize.of(size, units), locale);
    }

    @GetMapping("/sites/{id:\\d+}/labels")
    String all(@PathVariable long id, Locale locale, Model model) {
        return page(ofSite(id, locale), "/sites/" + id, "/sites/" + id + "/labels.pdf", model);
    }

    @GetMapping("/sites/{id:\\d+}/labels.pdf")
    ResponseEntity<byte[]> allPdf(
            @PathVariable long id, @RequestParam(required = false) @Nullable String size, UnitSet units, Locale locale)
            throws IOException {
        return pdf(ofSite(id, locale), PaperSize.of(size, units), locale);
    }

    private record Labels(String title, List<LabelView> labels) {}

    private Labels ofMachine(long id, Locale locale) {
        Compressor machine = compressors.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("compressor " + id));
        return new Labels(title("label.title", machine.tag(), locale), List.of(label(machine, machine.site())));
    }

    private Labels ofSite(long id, Locale locale) {
        Site site = sites.findById(id).orElseThrow(() -> new NoSuchRecord("site " + id));
        Stream<LabelView> machines = compressors.findAllBySiteIdOrderByPlateInServiceDescPlateTagAsc(id).stream()
                .filter(Compressor::isInService)
                .map(machine -> label(machine, site));
        Stream<LabelView> vessels = receivers.findAllBySiteIdAndFactsInServiceTrueOrderByFactsTag(id).stream()
                .map(receiver -> label(receiver, site));
        return new Labels(
                title("label.titles", site.name(), locale),
                Stream.concat(machines, vessels).toList());
    }

    private LabelView label(Compressor machine, Site site) {
        return new LabelView(machine.tag(), site.name(), "label.machine", QrCode.of(address.guided(machine.tag())));
    }

    private LabelView label(Receiver receiver, Site site) {
        return new LabelView(
                receiver.facts().tag(),
                site.name(),
                "label.receiver",
                QrCode.of(address.page("/receivers/" + receiver.id())));
    }

    private String title(String code, String name, Locale locale) {
        return messages.getMessage(code, new Object[] {name}, locale);
    }

    private String page(Labels labels, String back, String pdf, Model model) {
        model.addAttribute("title", labels.title());
        model.addAttribute("labels", labels.labels());
        model.addAttribute("back", back);
        model.addAttribute("pdfAddress", pdf);
        model.addAttribute("local", address.isLocal());
        return "labels/show";
    }

    private ResponseEntity<byte[]> pdf(Labels labels, PaperSize size, Locale locale) throws IOException {
        byte[] file = printer.print(new Printout(
                "labels/show-pdf",
                Map.of("title", labels.title(), "labels", labels.labels()),
                List.of("/static/css/paper.css"),
                size,
                locale,
                clock.instant()));
        return PdfDownload.of(file, "labels.pdf");
    }
}
