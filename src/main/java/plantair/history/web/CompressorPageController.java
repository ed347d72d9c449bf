package plantair.history.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.history.Machines;
import plantair.web.Paging;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** A compressor with everything it has delivered. */
@Controller
final class CompressorPageController {

    private static final int SIZE = 25;

    private final Machines machines;
    private final MachineViews views;
    private final CheckViews checks;
    private final CostViews costs;

    CompressorPageController(Machines machines, MachineViews views, CheckViews checks, CostViews costs) {
        this.machines = machines;
        this.views = views;
        this.checks = checks;
        this.costs = costs;
    }

    @GetMapping("/compressors/{id:\\d+}")
    String show(@PathVariable long id, @RequestParam(defaultValue = "1") int page, UnitSet units, Model model) {
        var file = machines.file(id, page, SIZE);
        model.addAttribute("machine", views.of(file, units));
        model.addAttribute(CheckViews.ATTRIBUTE, checks.ofMachine(id));
        model.addAttribute("cost", costs.of(file.machine()));
        model.addAttribute(
                "paging",
                new Paging("/compressors/" + id, page, SIZE, file.records().getTotalElements()));
        model.addAttribute("flowUnit", QuantityFormat.of(units).flowUnit());
        return "compressors/show";
    }
}
