package plantair.guided;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Compressors;
import plantair.guided.StoredDraft.State;
import plantair.web.NoSuchRecord;

/**
 * Keeps a copy of each form that is being filled in, so that it can be gone on with elsewhere. A copy made from an older
 * version than another browser's overwrites nothing: it stands beside, and a person chooses.
 */
@Service
public class DraftDesk {

    private final Drafts drafts;
    private final Compressors compressors;
    private final Clock clock;

    DraftDesk(Drafts drafts, Compressors compressors, Clock clock) {
        this.drafts = drafts;
        this.compressors = compressors;
        this.clock = clock;
    }

    /**
     * What came of a copy.
     *
     * @param fit whether it was made from what stands here
     * @param version the version that stands here now
     * @param testId the test that was already made of this form; null when there is none
     */
    public record Arrival(Fit fit, int version, @Nullable Long testId) {}

    /** How a copy fits what stands here. */
    public enum Fit {
        /** Nothing else was changed meanwhile. */
        FITS,
        /** It is what was recorded already. */
        RECORDED,
        /** Something else was; both are kept. */
        CLASHES
    }

    /** Saves a copy: in its place when it fits, else beside. */
    @Transactional
    public Arrival save(DraftCopy copy) {
        Optional<StoredDraft> main = lockedMain(copy);
        Arrival arrival = arrive(copy, main);
        if (arrival.fit() != Fit.FITS) {
            return arrival;
        }
        if (main.isEmpty()) {
            drafts.saveAndFlush(new StoredDraft(copy, 0, State.OPEN, clock.instant()));
            return new Arrival(Fit.FITS, 1, null);
        }
        if (!main.get().content().equals(copy.content())) {
            main.get().save(copy, clock.instant());
            drafts.saveAndFlush(main.get());
        }
        return new Arrival(Fit.FITS, main.get().version(), null);
    }

    /** Before a test is recorded: how its form fits. One that clashes is put beside. */
    @Transactional
    public Arrival arrive(DraftCopy copy) {
        return arrive(copy, lockedMain(copy));
    }

    private Optional<StoredDraft> lockedMain(DraftCopy copy) {
        compressors.findLockedById(copy.compressorId()).orElseThrow(() -> new NoSuchRecord("compressor"));
        Optional<StoredDraft> main = drafts.findByDraftKeyAndPlace(copy.key(), 0);
        if (main.isPresent() && !main.get().username().equals(copy.username())) {
            throw new NoSuchRecord("draft of somebody else");
        }
        return main;
    }

    private Arrival arrive(DraftCopy copy, Optional<StoredDraft> main) {
        if (main.isEmpty()) {
            return new Arrival(Fit.FITS, 0, null);
        }
        StoredDraft stands = main.get();
        boolean same = stands.content().equals(copy.content());
        if (stands.state() == State.SENT && same) {
            return new Arrival(Fit.RECORDED, stands.version(), stands.testId());
        }
        boolean own = !copy.writer().isEmpty() && copy.writer().equals(stands.writer());
        if (stands.state() != State.SENT && (same || own || stands.version() == copy.version())) {
            return new Arrival(Fit.FITS, stands.version(), null);
        }
        beside(copy);
        return new Arrival(Fit.CLASHES, stands.version(), stands.testId());
    }

    /** A device that sends the same again adds nothing. */
    private void beside(DraftCopy copy) {
        List<StoredDraft> all = drafts.findByDraftKeyOrderByPlace(copy.key());
        if (all.stream().noneMatch(draft -> draft.content().equals(copy.content()))) {
            int place = all.get(all.size() - 1).place() + 1;
            drafts.saveAndFlush(new StoredDraft(copy, place, State.BESIDE, clock.instant()));
        }
    }

    /** Notes that a form became a test; what was sent is kept to tell a second sending from another form. */
    @Transactional
    public void recorded(DraftCopy copy, long testId) {
        StoredDraft main = drafts.findByDraftKeyAndPlace(copy.key(), 0)
                .orElseGet(() -> new StoredDraft(copy, 0, State.OPEN, clock.instant()));
        main.save(copy, clock.instant());
        main.sent(testId);
        drafts.saveAndFlush(main);
    }

    /**
     * Chooses one version of a form: it becomes the form as it stands, the others are set aside. Of a form that was
     * recorded only the others can be set aside.
     */
    @Transactional
    public void choose(UUID key, int place, String username) {
        List<StoredDraft> all = versions(key, username);
        StoredDraft main = all.get(0);
        StoredDraft chosen = all.stream()
                .filter(draft -> draft.place() == place)
                .findFirst()
                .orElseThrow(() -> new NoSuchRecord("version " + place));
        boolean exchange = chosen != main && main.state() == State.OPEN;
        if (exchange) {
            DraftCopy old = copy(main);
            main.save(copy(chosen), clock.instant());
            var aside = new StoredDraft(old, all.get(all.size() - 1).place() + 1, State.SET_ASIDE, clock.instant());
            drafts.saveAndFlush(aside);
        }
        all.stream()
                .filter(draft -> draft != main && draft.state() == State.BESIDE)
                .forEach(StoredDraft::setAside);
        all.forEach(drafts::saveAndFlush);
    }

    private static DraftCopy copy(StoredDraft draft) {
        return new DraftCopy(
                draft.draftKey(),
                draft.compressorId(),
                draft.username(),
                draft.version(),
                draft.content(),
                draft.device(),
                draft.writer());
    }

    /**
     * All versions of a form, as it stands first.
     *
     * @throws NoSuchRecord when the person has no such form
     */
    @Transactional(readOnly = true)
    public List<StoredDraft> versions(UUID key, String username) {
        List<StoredDraft> all = drafts.findByDraftKeyOrderByPlace(key);
        if (all.isEmpty() || !all.get(0).username().equals(username)) {
            throw new NoSuchRecord("draft " + key);
        }
        return all;
    }

    /** All versions of each form that a person has not sent yet, or that has a version beside it; the newest form first. */
    @Transactional(readOnly = true)
    public Collection<List<StoredDraft>> ofPerson(String username) {
        Map<UUID, List<StoredDraft>> versions = new LinkedHashMap<>();
        drafts.findByUsernameAndStateInOrderBySavedAtDesc(username, List.of(State.OPEN, State.BESIDE))
                .forEach(draft -> versions.put(draft.draftKey(), new ArrayList<>()));
        drafts.findByDraftKeyInOrderByPlace(versions.keySet())
                .forEach(draft -> versions.get(draft.draftKey()).add(draft));
        versions.values().removeIf(form -> !form.get(0).username().equals(username));
        return versions.values();
    }
}
