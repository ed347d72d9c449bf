package plantair.instrument.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.instrument.Calibration;
import plantair.instrument.Calibrations;
import plantair.instrument.Instrument;
import plantair.instrument.Instruments;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;
import plantair.web.Search;
import plantair.web.UnitSet;

/** The instruments of the plant, and the page of each. */
@Controller
final class InstrumentController {

    private static final int ROWS = 50;

    private final Instruments instruments;
    private final Calibrations calibrations;
    private final CalibrationWords words;

    InstrumentController(Instruments instruments, Calibrations calibrations, CalibrationWords words) {
        this.instruments = instruments;
        this.calibrations = calibrations;
        this.words = words;
    }

    @GetMapping("/instruments")
    String list(
            @ModelAttribute("search") Search search,
            @RequestParam(defaultValue = "1") int page,
            UnitSet units,
            Model model) {
        Page<Instrument> found = instruments.findByPartOfTag(search.part(), PageRequest.of(Paging.index(page), ROWS));
        List<Instrument> rows = found.getContent();
        Map<Long, Calibration> latest = new HashMap<>();
        calibrations
                .findCurrent(rows.stream().map(Instrument::id).toList())
                .forEach(one -> latest.put(one.instrument().id(), one));
        model.addAttribute("paging", new Paging(search.address("/instruments"), page, ROWS, found.getTotalElements()));
        model.addAttribute(
                "instruments",
                rows.stream().map(row -> view(row, latest.get(row.id()), units)).toList());
        return "instruments/list";
    }

    @GetMapping("/instruments/{id}")
    String show(@PathVariable long id, UnitSet units, Model model) {
        Instrument instrument =
                instruments.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("instrument " + id));
        List<Calibration> current = calibrations.findCurrent(List.of(id));
        Calibration latest = current.isEmpty() ? null : current.get(current.size() - 1);
        model.addAttribute("instrument", view(instrument, latest, units));
        model.addAttribute("calibrations", CalibrationView.of(calibrations.findHistory(id), words));
        model.addAttribute("foundErrors", current.stream().anyMatch(Calibration::foundErrors));
        return "instruments/show";
    }

    private InstrumentView view(Instrument instrument, @Nullable Calibration latest, UnitSet units) {
        return InstrumentView.of(instrument, latest, words.status(latest), units);
    }
}
