package plantair.account.web;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.account.AccountEvent;
import plantair.account.AccountEvents;
import plantair.web.Paging;

/** The sign-ins, tried and done, newest first. */
@Controller
final class SignInController {

    private static final String ADDRESS = "/accounts/sign-ins";
    private static final int ROWS = 50;
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss 'UTC'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private final AccountEvents events;

    SignInController(AccountEvents events) {
        this.events = events;
    }

    @GetMapping("/accounts/sign-ins")
    String list(@RequestParam(defaultValue = "1") int page, Model model) {
        var paging = new Paging(ADDRESS, page, ROWS, events.count());
        var rows = events.findAllByOrderByIdDesc(PageRequest.of(paging.index(), ROWS));
        model.addAttribute("paging", paging);
        model.addAttribute("events", rows.map(EventView::of).getContent());
        return "accounts/sign-ins";
    }

    /** One line. */
    record EventView(String instant, String when, String kind, String username, String address) {

        static EventView of(AccountEvent event) {
            return new EventView(
                    event.happenedAt().toString(),
                    WHEN.format(event.happenedAt()),
                    event.kind().name(),
                    event.username(),
                    event.address());
        }
    }
}
