package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.context.ApplicationContext;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import plantair.testing.Database;
import plantair.testing.DemandForms;
import plantair.testing.OfferForms;
import plantair.testing.OnH2;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/**
 * Ten thousand odd requests to every mapped address, fixed seed: whatever stands in paths, parameters, fields, headers and
 * bodies is answered, and never with a failure of ours. New handlers are found by themselves.
 */
@OnH2
final class MangledRequestTests {

    private static final long SEED = 20261125;
    private static final int REQUESTS = Integer.getInteger("mangled", 10_000);
    private static final Duration LONGEST = Duration.ofSeconds(20);
    private static final int LEAST_ANSWERED = 100;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private ApplicationContext context;

    @BeforeEach
    void plantWithOneOfEach() {
        database.wipe();
        List.of(
                        PlantForms.SITE,
                        PlantForms.COMPRESSOR,
                        PlantForms.RECEIVER,
                        PlantForms.PIPE,
                        PlantForms.GAUGE,
                        PlantForms.certificate("K-1", "2026-03-01"),
                        PlantForms.pumpUp("2026-05-12", "62.2", "62.8", "62.5"),
                        DemandForms.NOZZLE,
                        OfferForms.OFFER,
                        OfferForms.OTHER,
                        SentForm.to("/compressors/1/events/new")
                                .with("submission", "6f0c8f5e-0000-4000-8000-000000000001")
                                .with("happenedOn", "2026-03-01")
                                .with("kind", "VALVES")
                                .with("edit.who", "Ann"))
                .forEach(form ->
                        assertThat(form.post(site).status()).as(form.address()).isEqualTo(302));
    }

    /** Every address with each method it takes. */
    private List<Address> addresses() {
        List<Address> found = new ArrayList<>();
        context.getBeansOfType(RequestMappingHandlerMapping.class)
                .values()
                .forEach(mapping -> mapping.getHandlerMethods().forEach((info, handler) -> {
                    if (ErrorController.class.isAssignableFrom(handler.getBeanType())) {
                        return; // answers what went wrong before it
                    }
                    for (String pattern : info.getPatternValues()) {
                        var methods = info.getMethodsCondition().getMethods();
                        (methods.isEmpty()
                                        ? List.of(HttpMethod.GET, HttpMethod.POST)
                                        : methods.stream()
                                                .map(method -> method.asHttpMethod())
                                                .toList())
                                .forEach(method -> found.add(new Address(method, pattern, handler)));
                    }
                }));
        found.sort(Address.ORDER);
        return found;
    }

    @Test
    void answersEveryOddRequest() {
        List<Address> addresses = addresses();
        var mangler = new RequestMangler(site, new Random(SEED), addresses);
        Map<String, Integer> sound = new TreeMap<>();
        int answered = 0;
        for (int number = 0; number < REQUESTS; number++) {
            Address address = addresses.get(number % addresses.size());
            long start = System.nanoTime();

            RequestMangler.Sent sent = mangler.send(address);

            assertThat(sent.status()).as("request %d: %s", number, sent.words()).isLessThan(500);
            assertThat(Duration.ofNanos(System.nanoTime() - start))
                    .as("request %d: %s", number, sent.words())
                    .isLessThan(LONGEST);
            if (sent.status() < 400) {
                answered++;
                sound.merge(address.toString(), 1, Integer::sum);
            }
        }
        assertThat(answered).as("some of them get through").isGreaterThan(LEAST_ANSWERED);
        assertThat(sound.keySet()).as("pages and saves alike").anyMatch(name -> name.startsWith("POST"));
    }
}
