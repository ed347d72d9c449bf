package plantair.attachment;

import java.util.Locale;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import plantair.register.ChangeRecord;
import plantair.register.ChangeRecords;
import plantair.register.RecordTexts;
import plantair.web.NoSuchRecord;

/** The records that something can be attached to. */
@Component
public class AttachedObjects {

    private final RecordTexts texts;
    private final ChangeRecords changes;

    AttachedObjects(RecordTexts texts, ChangeRecords changes) {
        this.texts = texts;
        this.changes = changes;
    }

    /**
     * How people call a record, by the newest line about it.
     *
     * @throws NoSuchRecord when there is none
     */
    public String name(AttachedTo to, long id) {
        String fallback = to.name().toLowerCase(Locale.ROOT) + " " + id;
        texts.of(to.kind(), id).orElseThrow(() -> new NoSuchRecord(fallback));
        return changes.findByKindAndObjectIdOrderByIdDesc(to.kind(), id, Limit.of(1)).stream()
                .map(ChangeRecord::objectName)
                .findFirst()
                .orElse(fallback);
    }
}
