package plantair.attachment.web;

import java.util.List;
import plantair.attachment.AttachedFile;
import plantair.attachment.AttachedTo;

/**
 * The photos and papers of a record.
 *
 * @param kind kind of the record
 * @param objectId its number
 * @param all oldest first, withdrawn ones too
 */
public record PapersView(AttachedTo kind, long objectId, List<AttachedFile> all) {

    /** Those that were not withdrawn. */
    public List<AttachedFile> standing() {
        return all.stream().filter(file -> file.withdrawn() == null).toList();
    }

    /** Those that were. */
    public List<AttachedFile> withdrawn() {
        return all.stream().filter(file -> file.withdrawn() != null).toList();
    }
}
