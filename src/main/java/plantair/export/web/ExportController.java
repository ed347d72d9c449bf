package plantair.export.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.Writer;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.util.UriComponentsBuilder;
import plantair.equipment.Compressors;
import plantair.export.AllFiles;
import plantair.export.AuditPack;
import plantair.export.DataFile;
import plantair.export.DataFiles;
import plantair.export.ExportFilter;
import plantair.export.TableFile;
import plantair.export.TestFile;
import plantair.site.Sites;
import plantair.web.Choice;
import plantair.web.FieldChecks;
import plantair.web.NoSuchRecord;
import plantair.web.UnitSet;

/** The export page and the file it leads to. */
@Controller
final class ExportController {

    private final TestFile file;
    private final TableFile tables;
    private final AllFiles all;
    private final AuditPack pack;
    private final Sites sites;
    private final Compressors compressors;
    private final Clock clock;

    ExportController(
            TestFile file,
            TableFile tables,
            AllFiles all,
            AuditPack pack,
            Sites sites,
            Compressors compressors,
            Clock clock) {
        this.file = file;
        this.tables = tables;
        this.all = all;
        this.pack = pack;
        this.sites = sites;
        this.compressors = compressors;
        this.clock = clock;
    }

    @GetMapping("/export")
    String page(@ModelAttribute("form") ExportForm form, BindingResult errors) {
        return "export/index";
    }

    /** The file; the page with what is wrong when the choice cannot be read. */
    @GetMapping("/export/tests.csv")
    @Nullable
    String tests(@ModelAttribute("form") ExportForm form, BindingResult errors, HttpServletResponse response)
            throws IOException {
        ExportFilter filter = read(form, errors);
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return "export/index";
        }
        Writer out = Download.csv(response, name("tests", "csv"));
        file.write(filter, out);
        out.flush();
        return null;
    }

    /** Everything as one zip. */
    @GetMapping("/export/all.zip")
    void everything(HttpServletResponse response) throws IOException {
        var out = new BufferedOutputStream(Download.zip(response, name("records", "zip")));
        all.write(out);
        out.flush();
    }

    /** One of the files of the zip. */
    @GetMapping("/export/{name:[a-z_]+}.csv")
    void table(@PathVariable String name, HttpServletResponse response) throws IOException {
        Optional<DataFile> table = DataFiles.ALL.stream()
                .filter(known -> known.name().equals(name))
                .findFirst();
        if (table.isEmpty() && !name.equals(AllFiles.DICTIONARY)) {
            throw new NoSuchRecord("file " + name);
        }
        Writer out = Download.csv(response, name(name, "csv"));
        if (table.isPresent()) {
            tables.write(table.get(), out);
        } else {
            AllFiles.writeDictionary(out);
        }
        out.flush();
    }

    /** The audit pack of a machine. */
    @GetMapping("/export/pack/{compressor:\\d{1,18}}.zip")
    @Nullable
    String pack(
            @PathVariable String compressor,
            @ModelAttribute("form") ExportForm form,
            BindingResult errors,
            UnitSet units,
            Locale locale,
            HttpServletResponse response)
            throws IOException {
        form.setCompressor(compressor);
        ExportFilter filter = read(form, errors);
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return "export/index";
        }
        var out = new BufferedOutputStream(Download.zip(response, name("audit-pack-" + compressor, "zip")));
        pack.write(filter, units, locale, out);
        out.flush();
        return null;
    }

    /** From the form, where the machine is a choice like any other. */
    @GetMapping("/export/pack")
    String choosePack(@ModelAttribute("form") ExportForm form, BindingResult errors, HttpServletResponse response) {
        ExportFilter filter = read(form, errors);
        if (filter.compressorId() == 0 && !errors.hasErrors()) {
            errors.rejectValue("compressor", "export.pack.which");
        }
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return "export/index";
        }
        return "redirect:"
                + UriComponentsBuilder.fromPath("/export/pack/" + filter.compressorId() + ".zip")
                        .queryParam("from", form.getFrom().strip())
                        .queryParam("to", form.getTo().strip())
                        .toUriString();
    }

    private String name(String what, String ending) {
        return "plant-air-" + what + "-" + LocalDate.now(clock) + "." + ending;
    }

    private ExportFilter read(ExportForm form, BindingResult errors) {
        var checks = new FieldChecks(errors);
        long site = checks.id("site", form.getSite(), false).orElse(0L);
        long compressor = checks.id("compressor", form.getCompressor(), false).orElse(0L);
        LocalDate from = checks.date("from", form.getFrom(), false).orElse(null);
        LocalDate to = checks.date("to", form.getTo(), false).orElse(null);
        if (site != 0 && sites.findById(site).isEmpty()) {
            errors.rejectValue("site", "choice.unknown", new Object[] {form.getSite()}, null);
        }
        if (compressor != 0 && compressors.findById(compressor).isEmpty()) {
            errors.rejectValue("compressor", "choice.unknown", new Object[] {form.getCompressor()}, null);
        }
        if (from != null && to != null && to.isBefore(from)) {
            errors.rejectValue("to", "export.to.beforeFrom");
        }
        return new ExportFilter(site, compressor, from, to);
    }

    @ModelAttribute("files")
    List<String> files() {
        return DataFiles.ALL.stream().map(DataFile::name).toList();
    }

    @ModelAttribute("sites")
    List<Choice> sites() {
        return sites.findAllByOrderByFactsName().stream()
                .map(site -> new Choice(String.valueOf(site.id()), site.name()))
                .toList();
    }

    /** Those of the chosen site, or of all where they are few enough for a list; the chosen one in any case. */
    @ModelAttribute("machines")
    MachineChoices machines(@ModelAttribute("form") ExportForm form) {
        var unread = new FieldChecks(new BeanPropertyBindingResult(form, "form"));
        return MachineChoices.of(
                compressors,
                unread.id("site", form.getSite(), false).orElse(0L),
                unread.id("compressor", form.getCompressor(), false).orElse(0L));
    }
}
