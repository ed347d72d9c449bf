package plantair.testrecord.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.Plant;

/** Whatever is typed into a test form: saved, asked about or refused, never a failure of ours. Fixed seed. */
@OnH2
final class MangledFormTests {

    private static final long SEED = 20260615;
    private static final int FORMS = 1_000;
    private static final List<String> ODD = List.of(
            "",
            " ",
            "-",
            ".",
            "0",
            "-0",
            "0.0000000001",
            "999999999",
            "-999999999",
            "1e9",
            "NaN",
            "Infinity",
            "٣",
            "１２",
            "1,5",
            "1.5.5",
            "0x1F",
            "1:00",
            "99:59",
            "0:00",
            "−5",
            "½",
            "'; drop table site; --",
            "<b>5</b>",
            "\u0000",
            "\uD800",
            "🙂",
            "true",
            "null",
            "[psi]",
            "Cel",
            "%",
            "9999-12-31",
            "0001-01-01",
            "24:00",
            "00000000-0000-0000-0000-000000000000",
            "SETTLED",
            "NOT_MEASURED",
            "2",
            "x".repeat(5_000));

    @Autowired
    private MockMvcTester mvc;

    @Autowired
    private Database database;

    @Autowired
    private ApplicationContext context;

    @BeforeEach
    void plantWithOneMachine() {
        database.wipe();
        Plant plant = Plant.in(context);
        var site = plant.site();
        plant.compressor(site);
        plant.receiver(site);
    }

    @Test
    void neverFailsOnOddInput() {
        Random random = new Random(SEED);
        List<Integer> answers = new ArrayList<>();
        for (int form = 0; form < FORMS; form++) {
            TestFormParameters typed = TestFormParameters.sound();
            List<String> names = List.copyOf(typed.parameters().keySet());
            List<String> changes = new ArrayList<>();
            for (int change = 0; change <= random.nextInt(4); change++) {
                String name = names.get(random.nextInt(names.size()));
                String value = ODD.get(random.nextInt(ODD.size()));
                changes.add(name + "=" + value);
                typed.with(name, value);
            }

            int status = mvc.post()
                    .uri("/compressors/1/tests")
                    .params(typed.parameters())
                    .exchange()
                    .getResponse()
                    .getStatus();

            assertThat(status).as("form %d: %s", form, changes).isIn(200, 302, 400, 422);
            answers.add(status);
        }
        assertThat(answers).contains(302, 422);
    }
}
