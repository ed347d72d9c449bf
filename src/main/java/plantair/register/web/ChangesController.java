package plantair.register.web;

import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.register.Changes;
import plantair.web.Paging;

/** The log of changes, newest first. */
@Controller
final class ChangesController {

    private static final int ROWS = 50;

    private final Changes changes;

    ChangesController(Changes changes) {
        this.changes = changes;
    }

    @GetMapping("/changes")
    String list(@RequestParam(defaultValue = "1") int page, Model model) {
        var paging = new Paging("/changes", page, ROWS, changes.count());
        var rows = changes.findAllByOrderByIdDesc(PageRequest.of(paging.index(), ROWS));
        model.addAttribute("paging", paging);
        model.addAttribute("changes", rows.map(ChangeView::of).getContent());
        return "changes/list";
    }
}
