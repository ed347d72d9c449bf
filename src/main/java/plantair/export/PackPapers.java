package plantair.export;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;
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

    void add(List<AttachedFile> papers, ZipOutputStream zip) throws IOException {
        contents.add(
                papers.stream().map(AttachedFile::sha256).collect(Collectors.toCollection(TreeSet::new)).stream()
                        .toList(),
                zip);
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
