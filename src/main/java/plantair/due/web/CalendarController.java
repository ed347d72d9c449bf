package plantair.due.web;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.XProperty;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import plantair.due.CalendarFeed;
import plantair.due.Calendars;
import plantair.due.DueEntry;
import plantair.due.DueList;
import plantair.due.DueWords;
import plantair.site.Site;
import plantair.web.NoSuchRecord;

/**
 * What is due as a calendar, for whoever knows the secret of its address: names and days, nothing else. A program that
 * keeps calendars cannot sign in.
 */
@Controller
final class CalendarController {

    private static final MediaType CALENDAR = new MediaType("text", "calendar", StandardCharsets.UTF_8);

    private final Calendars calendars;
    private final DueList list;
    private final DueWords words;
    private final Clock clock;

    CalendarController(Calendars calendars, DueList list, DueWords words, Clock clock) {
        this.calendars = calendars;
        this.list = list;
        this.words = words;
        this.clock = clock;
    }

    @GetMapping("/calendar/{token}.ics")
    ResponseEntity<String> feed(@PathVariable String token) {
        CalendarFeed feed = calendars.find(token).orElseThrow(() -> new NoSuchRecord("no such calendar"));
        return ResponseEntity.ok().contentType(CALENDAR).body(text(feed));
    }

    private String text(CalendarFeed feed) {
        Site site = feed.site();
        var calendar = new Calendar();
        calendar.add(new ProdId("-//Plant Air Records//due list//EN"));
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(new XProperty("X-WR-CALNAME", words.calendar(site == null ? "" : site.name())));
        list.all().stream()
                .filter(entry -> entry.due() != null)
                .filter(entry -> site == null || entry.siteId() == null || entry.siteId() == site.id())
                .forEach(entry -> calendar.add(event(entry, feed.id())));
        var text = new StringWriter();
        try {
            // a calendar without anything due is one all the same, which the library holds for a fault
            new CalendarOutputter(false).output(calendar, text);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    /** A whole day, at whatever place the reader is; the same thing keeps its mark when its day moves. */
    private VEvent event(DueEntry entry, long feedId) {
        LocalDate day = Objects.requireNonNull(entry.due());
        var event = new VEvent(false);
        String mark = entry.kind().name().toLowerCase(Locale.ROOT) + "-" + entry.objectId() + "-" + feedId;
        event.add(new Uid(mark + "@plant-air-records"));
        event.add(new DtStamp(clock.instant()));
        event.add(new DtStart<>(day));
        event.add(new DtEnd<>(day.plusDays(1)));
        event.add(new Summary(words.summary(entry)));
        event.add(ImmutableTransp.TRANSPARENT);
        return event;
    }
}
