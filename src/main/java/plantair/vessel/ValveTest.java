package plantair.vessel;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.register.FactLines;

/** A test of a relief valve. Written once; a correction is another one that names this one. */
@Entity
@Immutable
@NullUnmarked
public class ValveTest {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;
    private long valveId;
    private LocalDate doneOn;

    @Enumerated(EnumType.STRING)
    private TestMethod method;

    private @Nullable Entered poppedAt;
    private boolean passed;
    private String doneBy;
    private String note;

    @Embedded
    private Entry entry;

    protected ValveTest() {}

    ValveTest(ValveTestDraft draft, Entry entry) {
        submission = draft.submission();
        valveId = draft.valveId();
        doneOn = draft.doneOn();
        method = draft.method();
        poppedAt = draft.poppedAt();
        passed = draft.passed();
        doneBy = draft.doneBy();
        note = draft.note();
        this.entry = entry;
    }

    public long id() {
        return id;
    }

    public Entry entry() {
        return entry;
    }

    /** The test as it was typed, under its own submission. */
    public ValveTestDraft draft() {
        return new ValveTestDraft(submission, valveId, doneOn, method, poppedAt, passed, doneBy, note);
    }

    /** One fact a line for the change log. */
    String lines() {
        return new FactLines()
                .add("entry", id)
                .add("date", doneOn)
                .add("method", method)
                .add("popped at", poppedAt)
                .add("passed", passed)
                .add("done by", doneBy)
                .add("note", note.replaceAll("\n+", "\n"))
                .add("withdrawn", entry.withdrawn() ? true : null)
                .toString();
    }
}
