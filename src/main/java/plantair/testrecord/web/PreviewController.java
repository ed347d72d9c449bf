package plantair.testrecord.web;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.validation.ObjectError;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.pumpup.PumpUpResult;
import plantair.testrecord.RecordTest;
import plantair.testrecord.ResultText;
import plantair.testrecord.TestDraft;
import plantair.web.NoSuchRecord;
import plantair.web.UnitSet;

/** Says what a test comes to while its form is still being filled in; records nothing. */
@Controller
class PreviewController {

    private static final String PAGE = "tests/_preview :: preview";

    private final Compressors compressors;
    private final RecordTest record;
    private final TestFormReader reader;
    private final HoldPreviews holds;
    private final ResultText text;
    private final MessageSource messages;

    PreviewController(
            Compressors compressors,
            RecordTest record,
            TestFormReader reader,
            HoldPreviews holds,
            ResultText text,
            MessageSource messages) {
        this.compressors = compressors;
        this.record = record;
        this.reader = reader;
        this.holds = holds;
        this.text = text;
        this.messages = messages;
    }

    /** What the runs so far say; those that are not finished are left out. */
    @PostMapping("/compressors/{id}/tests/preview")
    @Transactional(readOnly = true)
    public String runs(
            @PathVariable long id,
            @ModelAttribute("form") TestForm form,
            BindingResult errors,
            UnitSet units,
            Locale locale,
            Model model) {
        Compressor compressor = find(id);
        boolean unsettled = form.leaveOutUnfinished();
        Optional<TestDraft> draft = form.getRuns().isEmpty() ? Optional.empty() : reader.read(form, compressor, errors);
        model.addAttribute("unsettled", unsettled);
        model.addAttribute("missing", missing(errors, locale));
        draft.ifPresent(whole -> fill(model, whole, new ResultWords(units, messages, locale)));
        return PAGE;
    }

    private void fill(Model model, TestDraft draft, ResultWords words) {
        PumpUpResult result = record.preview(draft);
        model.addAttribute("head", words.headline(result, "", null, ""));
        model.addAttribute("runs", words.runs(draft.runs(), result));
        model.addAttribute("findings", words.findings(result, text));
    }

    private List<String> missing(BindingResult errors, Locale locale) {
        return errors.getAllErrors().stream()
                .map((ObjectError error) -> messages.getMessage(error, locale))
                .distinct()
                .toList();
    }

    /** Whether the static hold is good enough to go on. */
    @PostMapping("/compressors/{id}/tests/hold")
    @Transactional(readOnly = true)
    public String hold(
            @PathVariable long id,
            @ModelAttribute("form") TestForm form,
            BindingResult errors,
            UnitSet units,
            Locale locale,
            Model model) {
        var judged = holds.judge(form, find(id), errors, new ResultWords(units, messages, locale));
        model.addAttribute("hold", judged.orElse(null));
        model.addAttribute("missing", missing(errors, locale));
        return "tests/_preview :: hold";
    }

    private Compressor find(long id) {
        return compressors.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("compressor " + id));
    }
}
