package plantair.due.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import plantair.account.AccountEvent.Kind;
import plantair.account.SignIn;
import plantair.account.SignedIn;
import plantair.due.CalendarFeed;
import plantair.due.Calendars;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.Choice;
import plantair.web.FieldChecks;
import plantair.web.Flash;
import plantair.web.NoSuchRecord;

/** The calendar addresses of the own account. */
@Controller
final class CalendarPageController {

    private static final String PAGE = "due/calendar";
    private static final String ADDRESS = "/account/calendar";

    private final Calendars calendars;
    private final Sites sites;
    private final SignIn signIn;

    CalendarPageController(Calendars calendars, Sites sites, SignIn signIn) {
        this.calendars = calendars;
        this.sites = sites;
        this.signIn = signIn;
    }

    @GetMapping(ADDRESS)
    ModelAndView show(@ModelAttribute("form") CalendarForm form, SignedIn me) {
        return page(me);
    }

    /** The address is shown on this answer and never again. */
    @PostMapping(ADDRESS)
    ModelAndView make(
            @ModelAttribute("form") CalendarForm form, BindingResult errors, SignedIn me, HttpServletRequest request) {
        Optional<Long> chosen = new FieldChecks(errors).id("site", form.getSite(), false);
        Optional<Site> site = chosen.flatMap(sites::findById);
        if (chosen.isPresent() && site.isEmpty()) {
            errors.rejectValue("site", "equipment.site.unknown");
        }
        Optional<String> token = errors.hasErrors() ? Optional.empty() : calendars.make(me.id(), site.orElse(null));
        if (token.isEmpty() && !errors.hasErrors()) {
            errors.reject("calendar.tooMany");
        }
        token.ifPresent(secret -> signIn.write(Kind.CALENDAR_MADE, me.username(), request.getRemoteAddr()));
        ModelAndView page = page(me);
        token.ifPresentOrElse(
                secret -> page.addObject("made", address(secret)),
                () -> page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT));
        return page;
    }

    private static String address(String secret) {
        return ServletUriComponentsBuilder.fromCurrentContextPath()
                .path("/calendar/{secret}.ics")
                .buildAndExpand(secret)
                .toUriString();
    }

    @PostMapping(ADDRESS + "/{id}/revoke")
    String revoke(@PathVariable long id, SignedIn me, HttpServletRequest request, RedirectAttributes redirect) {
        if (!calendars.revoke(id, me.id())) {
            throw new NoSuchRecord("calendar " + id);
        }
        signIn.write(Kind.CALENDAR_REVOKED, me.username(), request.getRemoteAddr());
        Flash.say(redirect, "calendar.revoked");
        return "redirect:" + ADDRESS;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute(
                "sites",
                sites.findAllByOrderByFactsName().stream()
                        .map(site -> new Choice(String.valueOf(site.id()), site.name()))
                        .toList());
    }

    private ModelAndView page(SignedIn me) {
        List<CalendarFeed> own = calendars.of(me.id());
        return new ModelAndView(PAGE, "feeds", own.stream().map(FeedRow::of).toList());
    }
}
