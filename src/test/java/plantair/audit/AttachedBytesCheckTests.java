package plantair.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.PlantForms;
import plantair.testing.SampleFiles;

/** What the check finds of the bytes of attached files. */
abstract class AttachedBytesCheckTests {

    @Autowired
    private AuditCheck check;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private TransactionTemplate transaction;

    private String large = "";
    private String small = "";

    /** One photo of several pieces, and a small one that two records hold. */
    @BeforeEach
    void attach() {
        database.wipe();
        database.recordPeople();
        AuditedPlant.send(site, PlantForms.SITE);
        AuditedPlant.attach(site, "SITE/1", SampleFiles.picture("png", 900, 700, 5));
        AuditedPlant.attach(site, "SITE/1", SampleFiles.jpeg());
        AuditedPlant.attach(site, "SITE/1", SampleFiles.jpeg());
        large = digest(1);
        small = digest(2);
    }

    private String digest(long id) {
        return jdbc.queryForObject("select sha256 from attachment where id = ?", String.class, id);
    }

    private List<String> after(Runnable alteration) {
        return transaction.execute(status -> {
            alteration.run();
            List<String> faults = check.check(read -> {}).faults().stream()
                    .map(fault -> fault.code() + " " + fault.record())
                    .toList();
            status.setRollbackOnly();
            return faults;
        });
    }

    private void alterByte(String sha256, int piece, int at) {
        byte[] bytes = jdbc.queryForObject(
                "select bytes from attachment_piece where sha256 = ? and position = ?", byte[].class, sha256, piece);
        bytes[at] ^= 1;
        jdbc.update("update attachment_piece set bytes = ? where sha256 = ? and position = ?", bytes, sha256, piece);
    }

    @Test
    void findsSoundBytesSound() {
        assertThat(after(() -> {})).isEmpty();
    }

    @Test
    void findsOneAlteredByteOfAnyPieceAndNamesTheAttachments() {
        for (int piece : new int[] {0, 1, 3}) {
            for (int at : new int[] {0, 1000}) {
                assertThat(after(() -> alterByte(large, piece, at))).containsExactly("BYTES_ALTERED ATTACHMENT 1");
            }
        }
        assertThat(after(() -> alterByte(small, 0, 0)))
                .containsExactly("BYTES_ALTERED ATTACHMENT 2", "BYTES_ALTERED ATTACHMENT 3");
    }

    @Test
    void findsAPieceTakenOutMovedOrPutIn() {
        List<String> found = List.of("BYTES_ALTERED ATTACHMENT 1");
        String where = " where sha256 = '" + large + "' and position = ";

        assertThat(after(() -> jdbc.update("delete from attachment_piece" + where + 0)))
                .isEqualTo(found);
        assertThat(after(() -> jdbc.update("delete from attachment_piece" + where + 3)))
                .isEqualTo(found);
        assertThat(after(() -> jdbc.update("update attachment_piece set position = 9" + where + 3)))
                .isEqualTo(found);
        assertThat(after(() -> jdbc.update(
                        "insert into attachment_piece (sha256, position, bytes) values (?, 9, ?)", large, new byte[] {1
                        })))
                .isEqualTo(found);
        assertThat(after(() -> jdbc.update(
                        "insert into attachment_piece (sha256, position, bytes) values (?, 9, ?)", large, new byte[0])))
                .isEqualTo(found);
    }

    @Test
    void findsOtherBytesPutInPlaceOfAPhoto() {
        assertThat(after(() -> jdbc.update("update attachment set sha256 = ? where id = 1", small)))
                .containsExactlyInAnyOrder("RECORD_ALTERED ATTACHMENT 1", "BYTES_WITHOUT_RECORD " + large);
    }

    @Test
    void findsBytesThatNoRecordTellsOf() {
        String other = "0".repeat(64);

        assertThat(after(() -> jdbc.update("insert into attachment_content (sha256) values (?)", other)))
                .containsExactly("BYTES_WITHOUT_RECORD " + other);
    }
}

@OnH2
final class AttachedBytesCheckOnH2Tests extends AttachedBytesCheckTests {}

@OnPostgres
final class AttachedBytesCheckOnPostgresTests extends AttachedBytesCheckTests {}
