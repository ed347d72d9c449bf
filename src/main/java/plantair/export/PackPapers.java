package plantair.export;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipOutputStream;
import org.springframework.context.MessageSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import plantair.attachment.AttachedFile;
import plantair.attachment.AttachedFiles;
import plantair.attachment.ContentFiles;

/** The photos and papers of an audit pack: named in its report, and their files. */
@Component
class PackPapers {

    private final JdbcTemplate jdbc;
    private final AttachedFiles files;
    private final ContentFiles contents;
    private final MessageSource messages;

    PackPapers(JdbcTemplate jdbc, AttachedFiles files, ContentFiles contents, MessageSource messages) {
        this.jdbc = jdbc;
        this.files = files;
        this.contents = contents;
        this.messages = messages;
    }

    List<AttachedFile> of(long compressorId) {
        String sql = "select id from attachment where " + RecordFiles.PAPERS_OF + " order by id";
        Object[] ids =
                sql.chars().filter(c -> c == '?').mapToObj(c -> compressorId).toArray();
        return files.withIds(jdbc.queryForList(sql, Long.class, ids));
    }

    /** Their files, and those of the loggers of the machine's tests. */
    void add(long compressorId, List<AttachedFile> papers, ZipOutputStream zip) throws IOException {
        Set<String> digests = new TreeSet<>(jdbc.queryForList(
                "select sha256 from logged_run where " + LogTables.OF_TESTS, String.class, compressorId));
        papers.forEach(paper -> digests.add(paper.sha256()));
        contents.add(List.copyOf(digests), zip);
    }

    List<PackReport.Paper> lines(List<AttachedFile> papers, Locale locale) {
        return papers.stream()
                .map(paper -> new PackReport.Paper(
                        paper.description(),
                        paper.name() + ", " + paper.format() + ", " + paper.size(),
                        paper.to() + " " + paper.objectId(),
                        paper.at() + ", " + paper.by(),
                        paper.sha256(),
                        paper.withdrawn() == null
                                ? ""
                                : messages.getMessage(
                                        "attachment.isWithdrawn",
                                        new Object[] {
                                            paper.withdrawn().at(),
                                            paper.withdrawn().by(),
                                            paper.withdrawn().reason()
                                        },
                                        locale)))
                .toList();
    }
}
