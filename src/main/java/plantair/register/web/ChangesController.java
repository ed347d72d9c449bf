package plantair.register.web;

import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.register.ChangeRecords;
import plantair.web.Paging;

/** The log of changes, newest first. */
@Controller
final class ChangesController {

    private static final int ROWS = 50;

    private final ChangeRecords changes;
    private final MessageSource messages;

    ChangesController(ChangeRecords changes, MessageSource messages) {
        this.changes = changes;
        this.messages = messages;
    }

    @GetMapping("/changes")
    String list(@RequestParam(defaultValue = "1") int page, Model model) {
        var paging = new Paging("/changes", page, ROWS, changes.count());
        var rows = changes.findAllByOrderByIdDesc(PageRequest.of(paging.index(), ROWS));
        model.addAttribute("paging", paging);
        model.addAttribute(
                "changes",
                rows.map(change -> ChangeView.of(change, this::basis)).getContent());
        return "changes/list";
    }

    private String basis(String code) {
        return messages.getMessage("basis." + code, null, code, LocaleContextHolder.getLocale());
    }
}
