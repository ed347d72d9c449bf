package plantair.testrecord;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Compressor;
import plantair.equipment.CompressorFollower;
import plantair.equipment.Compressors;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.register.Signature;
import plantair.web.NoSuchRecord;

/** Makes a test the baseline of its compressor from now on; earlier choices stay. Tells those who follow the machine. */
@Service
public class ChooseBaseline {

    private final BaselineChoices choices;
    private final Histories histories;
    private final Compressors compressors;
    private final Changes changes;
    private final Clock clock;
    private final ObjectProvider<CompressorFollower> followers;

    ChooseBaseline(
            BaselineChoices choices,
            Histories histories,
            Compressors compressors,
            Changes changes,
            Clock clock,
            ObjectProvider<CompressorFollower> followers) {
        this.choices = choices;
        this.histories = histories;
        this.compressors = compressors;
        this.changes = changes;
        this.clock = clock;
        this.followers = followers;
    }

    /** The choices of a compressor, oldest first. */
    @Transactional(readOnly = true)
    public List<BaselineChoice> of(long compressorId) {
        return choices.findByCompressorIdOrderById(compressorId);
    }

    /**
     * Chooses a baseline; the same submission a second time gives the choice of the first.
     *
     * @param submission made by the form, so that a form sent twice is one choice
     * @param test joins the trend of its compressor
     * @param eventId maintenance behind it; null when it was another reason
     */
    @Transactional
    public BaselineChoice choose(UUID submission, ResultLine test, @Nullable Long eventId, Signature signature) {
        Compressor compressor = compressors
                .findLockedById(test.compressorId())
                .orElseThrow(() -> new NoSuchRecord("compressor " + test.compressorId()));
        return choices.findBySubmission(submission)
                .orElseGet(() -> save(submission, compressor, test, eventId, signature));
    }

    private BaselineChoice save(
            UUID submission, Compressor compressor, ResultLine test, @Nullable Long eventId, Signature signature) {
        Optional<ResultLine> before = histories.of(compressor.id()).baseline();
        BaselineChoice choice = choices.saveAndFlush(new BaselineChoice(
                submission,
                compressor.id(),
                test.testId(),
                eventId,
                signature.reason(),
                clock.instant(),
                signature.by()));
        followers.orderedStream().forEach(follower -> follower.changed(compressor.id()));
        changes.save(new ChangeRecord(
                clock.instant(),
                signature.by(),
                ChangeKind.BASELINE,
                choice.id(),
                compressor.tag(),
                before.map(ChooseBaseline::line).orElse(null),
                line(test),
                signature.reason()));
        return choice;
    }

    private static String line(ResultLine test) {
        return "test " + test.testId() + " of " + test.date();
    }
}
