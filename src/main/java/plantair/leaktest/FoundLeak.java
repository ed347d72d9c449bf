package plantair.leaktest;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import plantair.register.FactLines;

/** A leak that was found. Written once; what becomes of it are steps, which are only ever added. */
@Entity
@Immutable
@NullUnmarked
public class FoundLeak {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;
    private long siteId;
    private String zone;
    private String tag;
    private String place;

    @Enumerated(EnumType.STRING)
    private LeakComponent component;

    @Embedded
    private LeakSize size;

    @Enumerated(EnumType.STRING)
    private LeakPriority priority;

    private LocalDate foundOn;
    private String foundBy;
    private String note;
    private Instant recordedAt;
    private String recordedBy;

    protected FoundLeak() {}

    FoundLeak(FoundLeakDraft draft, Instant recordedAt, String recordedBy) {
        submission = draft.submission();
        siteId = draft.siteId();
        zone = draft.zone();
        tag = draft.tag();
        place = draft.place();
        component = draft.component();
        size = draft.size();
        priority = draft.priority();
        foundOn = draft.foundOn();
        foundBy = draft.foundBy();
        note = draft.note();
        this.recordedAt = recordedAt;
        this.recordedBy = recordedBy;
    }

    public long id() {
        return id;
    }

    public long siteId() {
        return siteId;
    }

    public String tag() {
        return tag;
    }

    public Instant recordedAt() {
        return recordedAt;
    }

    public String recordedBy() {
        return recordedBy;
    }

    public ZoneId zoneId() {
        return ZoneId.of(zone);
    }

    /** The leak as it was typed, under its own submission. */
    public FoundLeakDraft draft() {
        LeakSize typed = size == null ? new LeakSize(null, null, null, null, null, null) : size;
        return new FoundLeakDraft(
                submission, siteId, zone, tag, place, component, typed, priority, foundOn, foundBy, note);
    }

    /** One fact a line for the change log. */
    String lines() {
        LeakSize typed = draft().size();
        return new FactLines()
                .add("tag", tag)
                .add("place", place)
                .add("component", component)
                .add("size by", typed.sizeBy())
                .add("flow", typed.flow())
                .add("bore", typed.bore())
                .add("pressure", typed.pressure())
                .add("priority", priority)
                .add("found on", foundOn)
                .add("found by", foundBy)
                .add("note", note.replaceAll("\n+", "\n"))
                .toString();
    }
}
