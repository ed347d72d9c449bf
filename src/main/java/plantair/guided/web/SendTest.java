package plantair.guided.web;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.Errors;
import plantair.equipment.Compressor;
import plantair.guided.DraftCopy;
import plantair.guided.DraftDesk;
import plantair.guided.MachineFigures;
import plantair.guided.ReadingsDraft;
import plantair.guided.RecordReadings;
import plantair.testrecord.GuideLog;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.RecordTest;
import plantair.testrecord.TestDraft;
import plantair.testrecord.web.TestFormPage;
import plantair.testrecord.web.TestFormReader;
import plantair.web.Person;
import plantair.web.UnitSet;
import plantair.web.Warnings;

/** Makes a test of a guided form: once, whatever is sent again, and never over another version of the same form. */
@Component
class SendTest {

    private final PumpUpTests tests;
    private final RecordTest record;
    private final RecordReadings readings;
    private final DraftDesk desk;
    private final TestFormReader reader;
    private final TestFormPage page;

    SendTest(
            PumpUpTests tests,
            RecordTest record,
            RecordReadings readings,
            DraftDesk desk,
            TestFormReader reader,
            TestFormPage page) {
        this.tests = tests;
        this.record = record;
        this.readings = readings;
        this.desk = desk;
        this.reader = reader;
        this.page = page;
    }

    /** What came of it. */
    enum State {
        /** The test is on record. */
        RECORDED,
        /** Another version of the form stands here; both are kept. */
        CLASH,
        /** Something is wrong or unusual with what was typed. */
        QUESTIONS
    }

    /**
     * An answer.
     *
     * @param state what came of it
     * @param href the page to look at next
     * @param warnings what is unusual
     */
    record Outcome(State state, String href, Warnings warnings) {}

    /** Records the test, or says why not; what is wrong is among the errors. */
    @Transactional
    public Outcome send(
            GuidedForm form, Errors errors, Compressor compressor, DraftCopy copy, UnitSet units, Person person) {
        DraftDesk.Arrival arrival = desk.arrive(copy);
        if (arrival.fit() == DraftDesk.Fit.CLASHES) {
            return new Outcome(State.CLASH, "/guided/drafts/" + copy.key(), new Warnings());
        }
        Optional<PumpUpTest> before = tests.findBySubmission(copy.key());
        if (before.isPresent()) {
            return recorded(before.get().id());
        }
        GuideLog log = new GuideReader(errors).log(form, compressor);
        MachineFigures figures = new GuideReader(errors).figures(form.getFigures());
        Optional<TestDraft> draft = reader.read(form, compressor, errors);
        Warnings warnings = draft.map(whole -> page.warnings(form, whole, Optional.empty(), units))
                .orElseGet(Warnings::new);
        if (draft.isEmpty() || !warnings.confirmedBy(form.getConfirmed())) {
            return new Outcome(State.QUESTIONS, "/guided/" + compressor.id() + "?draft=" + copy.key(), warnings);
        }
        PumpUpTest test = record.record(draft.get().with(log).withConfirmed(warnings.token()), person.name());
        if (!figures.isEmpty()) {
            readings.record(of(test, figures), person.name());
        }
        desk.recorded(copy, test.id());
        return recorded(test.id());
    }

    private static Outcome recorded(long testId) {
        return new Outcome(State.RECORDED, "/tests/" + testId, new Warnings());
    }

    private static ReadingsDraft of(PumpUpTest test, MachineFigures figures) {
        byte[] name = ("readings of " + test.submission()).getBytes(StandardCharsets.UTF_8);
        return new ReadingsDraft(
                UUID.nameUUIDFromBytes(name),
                test.compressor().id(),
                test.id(),
                test.performedAt(),
                test.zone().getId(),
                test.tester(),
                figures);
    }
}
