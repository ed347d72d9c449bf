package plantair.guided.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.guided.MachineFigures;
import plantair.guided.MachineReadings;
import plantair.guided.ReadingsDraft;
import plantair.guided.ReadingsLog;
import plantair.guided.RecordReadings;
import plantair.web.FieldChecks;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitSet;

/** Shows the readings of a machine, and corrects them by others that take their place. */
@Controller
class ReadingsController {

    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final String FORM = "guided/correct";

    private final ReadingsLog log;
    private final RecordReadings record;
    private final Compressors compressors;
    private final FigureWords words;
    private final GuidedPage page;

    ReadingsController(
            ReadingsLog log, RecordReadings record, Compressors compressors, FigureWords words, GuidedPage page) {
        this.log = log;
        this.record = record;
        this.compressors = compressors;
        this.words = words;
        this.page = page;
    }

    /** The page. */
    record View(
            long id,
            long machineId,
            String tag,
            @Nullable Long testId,
            String readAt,
            String reader,
            String recordedBy,
            String recordedAt,
            @Nullable Long supersedesId,
            @Nullable String reason,
            @Nullable Long laterId,
            @Nullable String laterReason,
            List<FigureWords.Line> lines) {}

    @GetMapping("/guided/readings/{id}")
    @Transactional(readOnly = true)
    public String show(@PathVariable long id, Model model) {
        MachineReadings readings = find(id);
        Optional<MachineReadings> later = log.findBySupersedesId(id);
        model.addAttribute(
                "readings",
                new View(
                        id,
                        readings.compressorId(),
                        machine(readings).tag(),
                        readings.testId(),
                        readings.readAt().atZone(readings.zone()).format(LOCAL),
                        readings.reader(),
                        readings.recordedBy(),
                        readings.recordedAt().atZone(readings.zone()).format(LOCAL),
                        readings.supersedesId(),
                        readings.reason(),
                        later.map(MachineReadings::id).orElse(null),
                        later.map(MachineReadings::reason).orElse(null),
                        words.of(readings.figures())));
        return "guided/readings";
    }

    @GetMapping("/guided/readings/{id}/correct")
    @Transactional(readOnly = true)
    public String form(@PathVariable long id, UnitSet units, Model model) {
        Optional<MachineReadings> later = log.findBySupersedesId(id);
        if (later.isPresent()) {
            return "redirect:/guided/readings/" + later.get().id();
        }
        MachineReadings old = find(id);
        return show(model, old, CorrectionForm.of(old.figures(), units));
    }

    @PostMapping("/guided/readings/{id}/correct")
    public String save(
            @PathVariable long id,
            @ModelAttribute("form") CorrectionForm form,
            BindingResult errors,
            Person person,
            Model model,
            RedirectAttributes redirect,
            HttpServletResponse response) {
        MachineReadings old = find(id);
        MachineFigures figures = new FiguresReader("figures.", errors).read(form.getFigures());
        Optional<String> reason = new FieldChecks(errors).text("reason", form.getReason(), 1000, true);
        Optional<UUID> key = DraftForms.parse(form.getSubmission());
        if (key.isEmpty()) {
            errors.reject("test.submission");
        }
        if (errors.hasErrors() || reason.isEmpty() || key.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return show(model, old, form);
        }
        var draft = new ReadingsDraft(
                key.get(),
                old.compressorId(),
                old.testId(),
                old.readAt(),
                old.zone().getId(),
                old.reader(),
                figures);
        MachineReadings made = record.supersede(old, draft, reason.get(), person.name());
        Flash.say(redirect, "guided.readings.saved");
        return "redirect:/guided/readings/" + made.id();
    }

    private String show(Model model, MachineReadings old, CorrectionForm form) {
        Compressor machine = machine(old);
        model.addAttribute("form", form);
        model.addAttribute("oldId", old.id());
        model.addAttribute("tag", machine.tag());
        model.addAttribute("machine", GuidedPage.Machine.of(machine.facts().plate()));
        page.fillFigures(model);
        return FORM;
    }

    private Compressor machine(MachineReadings readings) {
        return compressors
                .findWithSiteById(readings.compressorId())
                .orElseThrow(() -> new NoSuchRecord("compressor " + readings.compressorId()));
    }

    private MachineReadings find(long id) {
        return log.findById(id).orElseThrow(() -> new NoSuchRecord("readings " + id));
    }
}
