package plantair.guided;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** Forms that are still being filled in. */
public interface Drafts extends Repository<StoredDraft, Long> {

    StoredDraft saveAndFlush(StoredDraft draft);

    /** All versions of one form; the first is the form as it stands. */
    List<StoredDraft> findByDraftKeyOrderByPlace(UUID key);

    /** All versions of some forms, each as it stands first. */
    List<StoredDraft> findByDraftKeyInOrderByPlace(Collection<UUID> keys);

    Optional<StoredDraft> findByDraftKeyAndPlace(UUID key, int place);

    /** Those of a person in one of these states, newest first. */
    List<StoredDraft> findByUsernameAndStateInOrderBySavedAtDesc(String username, Collection<StoredDraft.State> states);
}
