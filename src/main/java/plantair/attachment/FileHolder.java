package plantair.attachment;

import java.util.List;

/** A kind of records that keep a file among the pieces, under its digest. */
public interface FileHolder {

    /** The records with these bytes as the check of the records names them: {@code ATTACHMENT 3}. */
    List<String> recordsWith(String sha256);

    /** Ending of the name of such a file, three letters; only asked where there is a record. */
    String ending(String sha256);
}
