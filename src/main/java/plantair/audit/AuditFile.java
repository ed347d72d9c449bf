package plantair.audit;

import jakarta.persistence.EntityManager;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import plantair.attachment.ContentFiles;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.ChangeRecords;
import plantair.register.RecordTexts;
import plantair.register.Sha256;

/**
 * The audit file: a zip of {@code changes.txt} with the chain, {@code records.txt} with every record, the attached files,
 * and {@code README.txt} that says how to check them with ordinary tools. docs/audit.md describes it.
 */
@Service
public class AuditFile {

    private static final int BATCH = 500;

    private final ChangeRecords records;
    private final RecordTexts texts;
    private final ContentFiles contents;
    private final EntityManager entities;

    AuditFile(ChangeRecords records, RecordTexts texts, ContentFiles contents, EntityManager entities) {
        this.contents = contents;
        this.records = records;
        this.texts = texts;
        this.entities = entities;
    }

    /** Writes the file batch by batch, on one view of the database. */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public void write(OutputStream out) throws IOException {
        var zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        Writer text = new OutputStreamWriter(zip, StandardCharsets.UTF_8);
        zip.putNextEntry(new ZipEntry("README.txt"));
        text.write(Recipe.TEXT);
        text.flush();
        zip.putNextEntry(new ZipEntry("changes.txt"));
        changes(text);
        text.flush();
        zip.putNextEntry(new ZipEntry("records.txt"));
        for (ChangeKind kind : ChangeKind.values()) {
            records(kind, text);
        }
        text.flush();
        contents.addAll(zip);
        zip.finish();
    }

    private void changes(Writer out) throws IOException {
        List<ChangeRecord> batch = records.findByChainNumberGreaterThanOrderByChainNumber(0, Limit.of(BATCH));
        while (!batch.isEmpty()) {
            for (ChangeRecord line : batch) {
                out.write(line.digest() + " " + line.line() + "\n");
            }
            long last = batch.get(batch.size() - 1).chainNumber();
            entities.clear();
            batch = records.findByChainNumberGreaterThanOrderByChainNumber(last, Limit.of(BATCH));
        }
    }

    private void records(ChangeKind kind, Writer out) throws IOException {
        List<Long> ids = texts.idsFrom(kind, Long.MIN_VALUE, BATCH);
        while (!ids.isEmpty()) {
            long last = ids.get(ids.size() - 1);
            for (Map.Entry<Long, String> record :
                    texts.between(kind, ids.get(0), last).entrySet()) {
                String text = record.getValue();
                out.write(Sha256.of(text) + " " + kind + "\t" + record.getKey() + "\t" + text + "\n");
            }
            ids = last == Long.MAX_VALUE ? List.of() : texts.idsFrom(kind, last + 1, BATCH);
        }
    }
}
