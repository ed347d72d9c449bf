package plantair.maintenance.web;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.equipment.Compressors;
import plantair.maintenance.MaintenanceEvent;
import plantair.maintenance.MaintenanceEvents;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;

/** The events of a machine, with what was corrected. */
@Controller
final class EventController {

    private static final int ROWS = 50;

    private final Compressors compressors;
    private final MaintenanceEvents events;

    EventController(Compressors compressors, MaintenanceEvents events) {
        this.compressors = compressors;
        this.events = events;
    }

    /** Leads to the list that holds the event. */
    @GetMapping("/events/{id}")
    String find(@PathVariable long id) {
        MaintenanceEvent event = events.findById(id).orElseThrow(() -> new NoSuchRecord("maintenance event " + id));
        return "redirect:/compressors/" + event.compressorId() + "/events";
    }

    @GetMapping("/compressors/{id}/events")
    String list(@PathVariable long id, @RequestParam(defaultValue = "1") int page, Model model) {
        Machine machine = compressors
                .findWithSiteById(id)
                .map(Machine::of)
                .orElseThrow(() -> new NoSuchRecord("compressor " + id));
        var rows = events.findByCompressorIdOrderByHappenedOnDescIdDesc(id, PageRequest.of(Paging.index(page), ROWS));
        List<Long> ids = rows.map(MaintenanceEvent::id).getContent();
        Map<Long, MaintenanceEvent> later = events.findBySupersedesIdIn(ids).stream()
                .collect(Collectors.toMap(MaintenanceEvent::supersedesId, Function.identity()));
        model.addAttribute("machine", machine);
        model.addAttribute("paging", new Paging(machine.events(), page, ROWS, rows.getTotalElements()));
        model.addAttribute(
                "events",
                rows.map(row -> EventView.of(row, later.get(row.id()), machine.zone()))
                        .getContent());
        return "maintenance/list";
    }
}
