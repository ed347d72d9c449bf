package plantair.vessel;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.register.FactLines;

/** An inspection of a receiver. Written once; a correction is another one that names this one. */
@Entity
@Table(name = "vessel_inspection")
@Immutable
@NullUnmarked
public class Inspection {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;
    private long receiverId;

    @Enumerated(EnumType.STRING)
    private InspectionKind kind;

    private LocalDate doneOn;
    private String inspector;
    private String employer;
    private String findings;
    private @Nullable Entered reducedMawp;
    private @Nullable LocalDate nextDue;
    private String instrument;
    private @Nullable Entered accuracy;

    @ElementCollection(fetch = FetchType.EAGER)
    @CollectionTable(name = "wall_reading", joinColumns = @JoinColumn(name = "inspection_id"))
    @OrderColumn(name = "position")
    private List<WallEntry> readings = new ArrayList<>();

    @Embedded
    private Entry entry;

    protected Inspection() {}

    Inspection(InspectionDraft draft, Entry entry) {
        submission = draft.submission();
        receiverId = draft.receiverId();
        var report = draft.report();
        kind = report.kind();
        doneOn = report.doneOn();
        inspector = report.inspector();
        employer = report.employer();
        findings = report.findings();
        reducedMawp = report.reducedMawp();
        nextDue = report.nextDue();
        instrument = report.instrument();
        accuracy = report.accuracy();
        readings.addAll(draft.readings());
        this.entry = entry;
    }

    public long id() {
        return id;
    }

    public Entry entry() {
        return entry;
    }

    /** The inspection as it was typed, under its own submission. */
    public InspectionDraft draft() {
        var report = new InspectionDraft.Report(
                kind, doneOn, inspector, employer, findings, reducedMawp, nextDue, instrument, accuracy);
        return new InspectionDraft(submission, receiverId, report, readings);
    }

    /** One fact a line for the change log. */
    String lines() {
        return new FactLines()
                .add("entry", id)
                .add("date", doneOn)
                .add("kind", kind)
                .add("inspector", inspector)
                .add("employer", employer)
                .add("findings", findings.replaceAll("\n+", "\n"))
                .add("reduced MAWP", reducedMawp)
                .add("next due", nextDue)
                .add("instrument", instrument)
                .add("accuracy", accuracy)
                .add("wall", wall())
                .add("withdrawn", entry.withdrawn() ? true : null)
                .toString();
    }

    private String wall() {
        return readings.stream()
                .map(reading -> reading.place() + " " + reading.thickness())
                .collect(Collectors.joining("; "));
    }
}
