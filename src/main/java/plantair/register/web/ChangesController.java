package plantair.register.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.ChangeRecords;
import plantair.register.SiteZones;
import plantair.web.Choice;
import plantair.web.Paging;

/** The log of changes, newest first. */
@Controller
final class ChangesController {

    private static final int ROWS = 50;

    private final ChangeRecords changes;
    private final SiteZones zones;
    private final MessageSource messages;

    ChangesController(ChangeRecords changes, SiteZones zones, MessageSource messages) {
        this.changes = changes;
        this.zones = zones;
        this.messages = messages;
    }

    @GetMapping("/changes")
    String list(
            @ModelAttribute("form") ChangesForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "1") int page,
            HttpServletResponse response,
            Model model) {
        ChangesForm.Filter filter = form.read(errors);
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute("changes", List.of());
            return "changes/list";
        }
        Page<ChangeRecord> found = find(filter, PageRequest.of(Paging.index(page), ROWS));
        model.addAttribute("paging", new Paging(form.address(), page, ROWS, found.getTotalElements()));
        model.addAttribute("changes", views(found.getContent()));
        return "changes/list";
    }

    private Page<ChangeRecord> find(ChangesForm.Filter filter, PageRequest page) {
        return filter.kind()
                .map(kind ->
                        changes.findOfKind(kind, filter.person(), filter.name(), filter.from(), filter.until(), page))
                .orElseGet(() -> changes.find(filter.person(), filter.name(), filter.from(), filter.until(), page));
    }

    private List<ChangeView> views(List<ChangeRecord> found) {
        Map<ChangeKind, Set<Long>> ids = found.stream()
                .collect(Collectors.groupingBy(
                        ChangeRecord::kind, Collectors.mapping(ChangeRecord::objectId, Collectors.toSet())));
        Map<ChangeKind, Map<Long, ZoneId>> known = new HashMap<>();
        ids.forEach((kind, some) -> known.put(kind, zones.of(kind, some)));
        return found.stream()
                .map(change -> ChangeView.of(
                        change, known.getOrDefault(change.kind(), Map.of()).get(change.objectId()), this::basis))
                .toList();
    }

    private String basis(String code) {
        return messages.getMessage("basis." + code, null, code, LocaleContextHolder.getLocale());
    }

    @ModelAttribute("kinds")
    List<Choice> kinds() {
        return Stream.of(ChangeKind.values())
                .map(kind -> new Choice(
                        kind.name(),
                        messages.getMessage("changes.kinds." + kind, null, LocaleContextHolder.getLocale())))
                .toList();
    }
}
