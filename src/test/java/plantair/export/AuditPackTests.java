package plantair.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.equipment.Compressor;
import plantair.instrument.Instrument;
import plantair.maintenance.EventKind;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;
import plantair.testing.SampleFiles;
import plantair.testing.SentFile;
import plantair.web.NoSuchRecord;
import plantair.web.UnitSet;

/** What an auditor reads and can check. */
abstract class AuditPackTests {

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @Autowired
    private AuditPack pack;

    @Autowired
    private MockMvcTester site;

    private Plant plant;
    private Compressor compressor;

    @BeforeEach
    void emptyPlant() {
        database.wipe();
        plant = Plant.in(context);
        compressor = plant.compressor(plant.site("Île Łuk <&>", "America/Chicago"));
    }

    @Test
    void tellsPlateTestsWorkAndWhatItIsNot() throws IOException {
        Instrument gauge = plant.gauge("G-1");
        var old =
                plant.plan(compressor).with(gauge).runs("60.2", "60.8", "60.5").record();
        plant.plan(compressor).with(gauge).runs("62.2", "62.3").by("Zoë ±²°−").supersede(old, "read 60 for 62");
        plant.event(compressor, LocalDate.parse("2026-01-04"), EventKind.BELT, true, "new belt");
        plant.restate(gauge, LocalDate.parse("2026-03-01"), "K-7");

        String text = text(files(compressor.id(), null, null).get("report.pdf"));

        assertThat(text)
                .contains("Audit pack: compressor C-1, Île Łuk <&>")
                .contains("maker and model: Two-stage piston", "rating: 35 cfm at 175 psi gauge")
                .contains("Not an acceptance test to ISO 1217", "no proof that a receiver")
                .contains("RECEIVER R-1: 120 [gal_us], MAWP 200 [psi]", "Version of the method: PU-1")
                .contains("Tests in this period: 2", "Zoë ±²°−", " ± ")
                .contains("Superseded by test 2: read 60 for 62", "Corrects test 1: read 60 for 62")
                .contains("G-1: –, –, NO_CERTIFICATE", "K-7")
                .contains("2026-01-04", "BELT", "new belt");
    }

    @Test
    void holdsTheFilesOfThatMachineAndPeriod() throws IOException {
        Compressor other = plant.compressor(compressor.site(), "C-2");
        Instrument gauge = plant.gauge("G-1");
        plant.gauge("G-2");
        plant.plan(compressor).on("2026-01-05T14:00:00Z").with(gauge).record();
        plant.plan(compressor).on("2026-02-05T14:00:00Z").record();
        plant.test(other, "2026-01-05T14:00:00Z", "60");
        plant.event(other, LocalDate.parse("2026-01-04"), EventKind.BELT, true, "elsewhere");

        Map<String, byte[]> files = files(compressor.id(), LocalDate.parse("2026-02-01"), null);

        assertThat(files.keySet())
                .contains("report.pdf", "tests.csv", "events.csv", "calibrations.csv", "baselines.csv", "changes.csv");
        assertThat(csv(files, "tests.csv")).contains("2026-02-05T").doesNotContain("2026-01-05T");
        assertThat(csv(files, "compressors.csv")).contains(",C-1,").doesNotContain(",C-2,");
        assertThat(csv(files, "instruments.csv")).contains("G-1").doesNotContain("G-2");
        assertThat(csv(files, "test_volumes.csv").lines()).hasSize(5);
        assertThat(csv(files, "events.csv")).doesNotContain("elsewhere");
        assertThat(text(files.get("report.pdf"))).contains("Tests in this period: 1");
    }

    @Test
    void namesPhotosAndPapersOfTheMachineAndHoldsTheirFiles() throws IOException {
        Compressor other = plant.compressor(compressor.site(), "C-2");
        Instrument gauge = plant.gauge("G-1");
        plant.plan(compressor).with(gauge).record();
        attach("COMPRESSOR/" + compressor.id(), SampleFiles.jpeg(), "plate Ä");
        attach("INSTRUMENT/" + gauge.id(), SampleFiles.png(), "dial");
        attach("COMPRESSOR/" + other.id(), SampleFiles.picture("png", 9, 9, 4), "elsewhere");

        Map<String, byte[]> files = files(compressor.id(), null, null);

        assertThat(files.keySet().stream().filter(name -> name.startsWith("files/")))
                .hasSize(2);
        assertThat(files.values()).contains(SampleFiles.jpeg(), SampleFiles.png());
        assertThat(csv(files, "attachments.csv")).contains("plate Ä", "dial").doesNotContain("elsewhere");
        assertThat(csv(files, "changes.csv")).contains(",ATTACHMENT,").doesNotContain("elsewhere");
        assertThat(text(files.get("report.pdf")))
                .contains("plate Ä", "INSTRUMENT 1", "Ann (ann)")
                .doesNotContain("elsewhere");
    }

    private void attach(String to, byte[] bytes, String description) {
        assertThat(SentFile.of(to, "x.bin", bytes, description).send(site).status())
                .isEqualTo(302);
    }

    @Test
    void saysThatAMachineHasNoTests() throws IOException {
        assertThat(text(files(compressor.id(), null, null).get("report.pdf")))
                .contains("Tests in this period: 0", "None in this period.");
        assertThatThrownBy(() -> files(999, null, null)).isInstanceOf(NoSuchRecord.class);
    }

    private Map<String, byte[]> files(long id, LocalDate from, LocalDate to) throws IOException {
        var out = new ByteArrayOutputStream();
        pack.write(new ExportFilter(0, id, from, to), UnitSet.byName(null), Locale.ENGLISH, out);
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (var in = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
        }
        return files;
    }

    private static String csv(Map<String, byte[]> files, String name) {
        return new String(files.get(name), StandardCharsets.UTF_8);
    }

    /** All words with one blank between them, wherever a line ends. */
    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}

@OnH2
final class AuditPackOnH2Tests extends AuditPackTests {}

@OnPostgres
final class AuditPackOnPostgresTests extends AuditPackTests {}
