package plantair.attachment;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** Photos and papers; they can be added and read, not altered. */
public interface Attachments extends Repository<Attachment, Long> {

    Attachment saveAndFlush(Attachment attachment);

    Optional<Attachment> findById(long id);

    List<Attachment> findByIdInOrderById(Collection<Long> ids);

    Optional<Attachment> findBySubmission(UUID submission);

    /** All of a record, oldest first, those withdrawn too. */
    List<Attachment> findByKindAndObjectIdOrderById(AttachedTo kind, long objectId);

    /** All of some records of a kind, oldest first, those withdrawn too. */
    List<Attachment> findByKindAndObjectIdInOrderById(AttachedTo kind, Collection<Long> objectIds);

    /** All that hold the same bytes. */
    List<Attachment> findBySha256OrderById(String sha256);
}
