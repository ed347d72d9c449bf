package plantair.guided.web;

import java.time.Clock;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageImpl;
import org.springframework.data.domain.PageRequest;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import plantair.equipment.Compressor;
import plantair.equipment.CompressorName;
import plantair.equipment.Compressors;
import plantair.guided.DraftDesk;
import plantair.guided.StoredDraft;
import plantair.web.Paging;
import plantair.web.Person;
import plantair.web.Search;

/** Where guided tests begin, and where those that wait are seen. */
@Controller
class GuidedStartController {

    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final int MACHINES = 50;

    private final Compressors compressors;
    private final DraftDesk desk;
    private final Clock clock;

    GuidedStartController(Compressors compressors, DraftDesk desk, Clock clock) {
        this.compressors = compressors;
        this.desk = desk;
        this.clock = clock;
    }

    /** A form that waits on the server. */
    record Waiting(String key, long machineId, String tag, String savedAt, String device, boolean clashes) {}

    /** The list; the tag on a machine's label leads on to it when one machine alone has it. */
    @GetMapping("/guided")
    @Transactional(readOnly = true)
    public String start(
            @RequestParam(defaultValue = "") String tag,
            @ModelAttribute("search") Search search,
            @RequestParam(defaultValue = "1") int page,
            Person person,
            Model model) {
        List<CompressorName> named = tag.isBlank() ? List.of() : compressors.findInServiceByTag(tag.strip());
        if (named.size() == 1) {
            return "redirect:/guided/" + named.get(0).id();
        }
        model.addAttribute("unknownTag", named.isEmpty() ? tag.strip() : "");
        model.addAttribute("sharedTag", named.isEmpty() ? "" : tag.strip());
        model.addAttribute("username", person.username());
        Page<CompressorName> found = named.isEmpty()
                ? compressors.findInService(search.part(), PageRequest.of(Paging.index(page), MACHINES))
                : new PageImpl<>(named);
        model.addAttribute("machines", found.getContent());
        model.addAttribute(
                "paging",
                new Paging(
                        search.address("/guided"), page, Math.max(MACHINES, named.size()), found.getTotalElements()));
        model.addAttribute("waiting", waiting(person));
        return "guided/start";
    }

    private List<Waiting> waiting(Person person) {
        Collection<List<StoredDraft>> forms = desk.ofPerson(person.username());
        Map<Long, Compressor> machines = compressors
                .findByIdIn(forms.stream()
                        .map(versions -> versions.get(0).compressorId())
                        .collect(Collectors.toSet()))
                .stream()
                .collect(Collectors.toMap(Compressor::id, Function.identity()));
        return forms.stream()
                .map(versions -> waiting(
                        versions,
                        Optional.ofNullable(machines.get(versions.get(0).compressorId()))))
                .toList();
    }

    private static Waiting waiting(List<StoredDraft> versions, Optional<Compressor> machine) {
        StoredDraft main = versions.get(0);
        boolean clashes = versions.stream().anyMatch(draft -> draft.state() == StoredDraft.State.BESIDE);
        return new Waiting(
                main.draftKey().toString(),
                main.compressorId(),
                machine.map(Compressor::tag).orElse("?"),
                machine.map(known -> main.savedAt()
                                .atZone(known.site().facts().zoneId())
                                .format(LOCAL))
                        .orElse(""),
                main.device(),
                clashes);
    }

    /** For scripts: a fresh token, who is signed in, and the clock of the server. */
    @GetMapping("/guided/token")
    @ResponseBody
    public Map<String, Object> token(CsrfToken token, Person person) {
        return Map.of("token", token.getToken(), "username", person.username(), "now", clock.millis());
    }
}
