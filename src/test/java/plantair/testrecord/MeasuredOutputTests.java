package plantair.testrecord;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import plantair.equipment.Compressor;
import plantair.quantity.GaugePressure;
import plantair.supply.CapacityPart;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.Plant;

/** What a machine adds to the capacity of its site is what its newest good test says. */
@OnH2
class MeasuredOutputTests {

    @Autowired
    private MeasuredOutputs outputs;

    @Autowired
    private StoredResults results;

    @Autowired
    private Database database;

    @Autowired
    private ApplicationContext context;

    private Compressor compressor;

    @BeforeEach
    void someTests() {
        database.wipe();
        Plant plant = Plant.in(context);
        var site = plant.site();
        compressor = plant.compressor(site);
        plant.receiver(site);
    }

    private long test(String performedAt, String... seconds) {
        return Plant.in(context).test(compressor, performedAt, seconds).id();
    }

    @Test
    void isThatOfTheNewestTestWhoseRunsAgree() {
        test("2025-11-04T15:00:00Z", "60.2", "60.8", "60.5");
        long good = test("2026-02-03T15:00:00Z", "61.2", "61.0", "61.7");
        test("2026-05-05T14:00:00Z", "50.0", "60.0", "72.0");

        Optional<MeasuredOutput> output = outputs.of(compressor.id());

        StoredResult stored =
                results.findByKeyTestIdAndKeyMethodVersion(good, "PU-1").orElseThrow();
        assertThat(output).hasValueSatisfying(one -> {
            assertThat(one.testId()).isEqualTo(good);
            assertThat(one.on()).isEqualTo("2026-02-03");
            assertThat(one.flow()).isEqualTo(stored.freeAir().orElseThrow());
        });
    }

    @Test
    void isNotThereWithoutATest() {
        assertThat(outputs.of(compressor.id())).isEmpty();
    }

    @Test
    void isCarriedToThePressureOfTheSiteAndLessSureThere() {
        test("2025-11-04T15:00:00Z", "60.2", "60.8", "60.5");
        MeasuredOutput output = outputs.of(compressor.id()).orElseThrow();

        CapacityPart there = output.part("C-1", output.at()).orElseThrow();
        CapacityPart below = output.part("C-1", new GaugePressure(output.at().pascals() - 1e5))
                .orElseThrow();

        assertThat(there.flow()).isEqualTo(output.flow());
        assertThat(below.flow().over(there.flow())).isCloseTo(Math.exp(0.02), within(1e-12));
        assertThat(below.shared()).anySatisfy(part -> {
            assertThat(part.source()).isEqualTo("slope");
            assertThat(part.relative()).isCloseTo(0.02 / Math.sqrt(3), within(1e-12));
        });
        assertThat(there.shared()).noneMatch(part -> part.source().equals("slope"));
    }

    @Test
    void isNotCarriedFurtherThanTheSlopeIsGoodFor() {
        test("2025-11-04T15:00:00Z", "60.2", "60.8", "60.5");
        MeasuredOutput output = outputs.of(compressor.id()).orElseThrow();

        assertThat(output.part("C-1", new GaugePressure(output.at().pascals() - 2e5)))
                .isEmpty();
    }

    @Test
    void tellsHowSureItIsAsTheResultDoes() {
        long test = test("2025-11-04T15:00:00Z", "60.2", "60.8", "60.5");
        MeasuredOutput output = outputs.of(compressor.id()).orElseThrow();

        double squares = output.shared().stream()
                .mapToDouble(part -> part.relative() * part.relative())
                .sum();

        StoredResult stored =
                results.findByKeyTestIdAndKeyMethodVersion(test, "PU-1").orElseThrow();
        assertThat(Math.sqrt(squares)).isCloseTo(stored.relativeShared(), within(1e-12));
        assertThat(output.relativeRandom()).isEqualTo(stored.relativeRandom());
    }
}
