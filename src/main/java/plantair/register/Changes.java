package plantair.register;

import java.sql.ResultSet;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.data.domain.Limit;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Writes the change log. Its lines make a chain: each holds the digest of the one before and that of the whole record it
 * tells of, so that a line or a record altered behind the application's back is found.
 */
@Service
public class Changes {

    /** What stands before the first line. */
    public static final String BEGINNING = "0".repeat(64);

    private static final String FIND = "select chain_number, digest, begun from chain_end where id = 1";
    private static final String LINK =
            "update change_record set chain_number = ?, content_digest = ?, previous_digest = ?, digest = ? where id = ?";
    private static final String ADD =
            "insert into change_record (chain_number, content_digest, previous_digest, digest,"
                    + " changed_at, changed_by, kind, object_id, object_name, before_text, after_text, reason)"
                    + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
    private static final String MOVE = "update chain_end set chain_number = ?, digest = ? where id = 1";

    private final ChangeRecords records;
    private final RecordTexts texts;
    private final JdbcTemplate jdbc;

    Changes(ChangeRecords records, RecordTexts texts, JdbcTemplate jdbc) {
        this.records = records;
        this.texts = texts;
        this.jdbc = jdbc;
    }

    /**
     * Adds a line at the end of the chain, in the transaction of the change itself, after the record was flushed and
     * every other lock was taken: two changes that wait for each other's locks would else never end.
     *
     * @throws IllegalStateException when the record that it tells of is not there
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public ChangeRecord save(ChangeRecord change) {
        ChainEnd end = lock();
        String content = texts.of(change.kind(), change.objectId()).orElseThrow(() -> noRecord(change));
        move(change.link(end, Sha256.of(content)));
        return records.saveAndFlush(change);
    }

    /** Adds many lines in their order, each about a record of its own that is there. */
    void addAll(List<ChangeRecord> lines) {
        move(link(lines));
        jdbc.batchUpdate(ADD, lines, lines.size(), (row, line) -> {
            row.setLong(1, Objects.requireNonNull(line.chainNumber()));
            row.setString(2, line.contentDigest());
            row.setString(3, line.previousDigest());
            row.setString(4, line.digest());
            row.setObject(5, line.changedAt().atOffset(ZoneOffset.UTC));
            row.setString(6, line.changedBy());
            row.setString(7, line.kind().name());
            row.setLong(8, line.objectId());
            row.setString(9, line.objectName());
            row.setString(10, line.beforeText());
            row.setString(11, line.afterText());
            row.setString(12, line.reason());
        });
    }

    /** How many lines there are. */
    public long count() {
        return records.count();
    }

    /** The lines about one thing, newest first. */
    List<ChangeRecord> of(ChangeKind kind, long objectId, Limit limit) {
        return records.findByKindAndObjectIdOrderByIdDesc(kind, objectId, limit);
    }

    /**
     * Links lines of the time before there was a chain; the records are taken as they are now. One that is gone already
     * stays a fault, but does not keep the program from starting.
     */
    void linkOld(List<ChangeRecord> lines) {
        move(link(lines));
        jdbc.batchUpdate(LINK, lines, lines.size(), (row, line) -> {
            row.setLong(1, Objects.requireNonNull(line.chainNumber()));
            row.setString(2, line.contentDigest());
            row.setString(3, line.previousDigest());
            row.setString(4, line.digest());
            row.setLong(5, line.id());
        });
    }

    /** Puts lines at the end of the chain, the contents of their records read by the kind. */
    private ChainEnd link(List<ChangeRecord> lines) {
        ChainEnd end = lock();
        Map<ChangeKind, Map<Long, String>> contents = lines.stream()
                .collect(Collectors.groupingBy(
                        ChangeRecord::kind, Collectors.mapping(ChangeRecord::objectId, Collectors.toSet())))
                .entrySet()
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, ids -> texts.of(ids.getKey(), ids.getValue())));
        for (ChangeRecord line : lines) {
            String content = contents.get(line.kind()).getOrDefault(line.objectId(), "");
            end = line.link(end, Sha256.of(content));
        }
        return end;
    }

    /** The end of the chain, from now on for this transaction alone; what it tells of is to be read after that. */
    private ChainEnd lock() {
        return end(FIND + " for update").orElseThrow(() -> new IllegalStateException("the chain has no end"));
    }

    private static IllegalStateException noRecord(ChangeRecord line) {
        return new IllegalStateException("no " + line.kind() + " " + line.objectId());
    }

    /**
     * Holds the end of the chain for this transaction alone, as saving does: what is read after that is what no other
     * instance is about to link.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public ChainEnd hold() {
        return lock();
    }

    /** Where the chain ends; empty when somebody took the row out that tells it. */
    public Optional<ChainEnd> end() {
        return end(FIND);
    }

    private Optional<ChainEnd> end(String sql) {
        return jdbc
                .query(sql, (ResultSet row, int n) -> new ChainEnd(row.getLong(1), row.getString(2), row.getBoolean(3)))
                .stream()
                .findFirst();
    }

    private void move(ChainEnd end) {
        jdbc.update(MOVE, end.number(), end.digest());
    }
}
