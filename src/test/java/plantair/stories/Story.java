package plantair.stories;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.testing.Database;
import plantair.testing.SentForm;

/**
 * A story starts with an empty installation and goes through its forms only. Its expected flows were worked out by hand
 * for an ideal gas; the program also takes the compressibility of air, which adds about half a percent between 100 and
 * 200 psi, so printed flows are held to within one percent of them. Humidity is typed as 0 %, where it changes nothing.
 */
abstract class Story {

    /** Printed flow against the hand figure of an ideal gas. */
    static final Percentage NEAR = Percentage.withPercentage(1);

    @Autowired
    MockMvcTester site;

    @Autowired
    private Database database;

    @BeforeEach
    void startWithNothing() {
        database.wipe();
    }

    /** Sends forms that must be taken. */
    void register(SentForm... forms) {
        for (SentForm form : forms) {
            send(form);
        }
    }

    /** Sends a form that must be taken, and opens the page that it leads to. */
    TestPage record(SentForm form) {
        return TestPage.of(site, send(form));
    }

    /** Sends a form that must be taken. */
    String send(SentForm form) {
        var answer = form.post(site);
        assertThat(answer.status()).as(answer.text()).isEqualTo(302);
        return answer.redirect();
    }

    /** The rows of the CSV file, one a run. */
    List<CSVRecord> csv() {
        try {
            String text = SentForm.get(site, "/export/tests.csv").response().getContentAsString();
            return CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(new StringReader(text.substring(1)))
                    .getRecords();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** A flow of the CSV file. */
    static double cfm(CSVRecord row, String column) {
        return new FlowRate(Double.parseDouble(row.get(column))).in(FlowUnit.CFM);
    }

    /** Rows of the chart's table on the page of machine 1, newest first; a hollow dot is one that is not included. */
    List<String> trend(boolean included) {
        return SentForm.get(site, "/compressors/1")
                .page()
                .select("#flows tbody tr[data-included=" + included + "]")
                .eachAttr("data-date");
    }
}
