package plantair.benchmark;

import java.io.IOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jsoup.Connection;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;

/**
 * Fifty people for ten minutes: each reads a page, thinks for one to five seconds, goes on to another; one step in twenty
 * records a test, one in two hundred fetches the CSV file of a machine. Any answer but the one hoped for is an error.
 */
public final class LoadBenchmark {

    private static final Logger LOG = System.getLogger("benchmark");
    private static final int MACHINES = Integer.getInteger("benchmark.machines", 2000);
    private static final int TESTS_A_MACHINE = Integer.getInteger("benchmark.tests-a-machine", 500);
    private static final int PEOPLE = Integer.getInteger("benchmark.people", 50);
    private static final int SECONDS = Integer.getInteger("benchmark.seconds", 600);

    /** As many as there are of a long list, see {@code plantair.web.Paging}. */
    private static final int LIST_PAGES = 400;

    private LoadBenchmark() {}

    private record Step(String what, double millis, String error) {}

    /** Runs it on the program {@code benchmark.many}. */
    public static void main(String[] arguments) throws Exception {
        var threads = Executors.newFixedThreadPool(PEOPLE);
        long end = System.nanoTime() + SECONDS * 1_000_000_000L;
        List<Callable<List<Step>>> people = new ArrayList<>();
        for (int person = 0; person < PEOPLE; person++) {
            Random random = new Random(person);
            people.add(() -> day(random, end));
        }
        Map<String, List<Step>> steps = new TreeMap<>();
        for (Future<List<Step>> day : threads.invokeAll(people)) {
            for (Step step : day.get()) {
                steps.computeIfAbsent(step.what, what -> new ArrayList<>()).add(step);
                steps.computeIfAbsent("all", what -> new ArrayList<>()).add(step);
            }
        }
        threads.shutdown();
        LOG.log(Level.INFO, "| step | how many | median (ms) | 95th (ms) | longest (ms) | errors |");
        steps.forEach(LoadBenchmark::tell);
    }

    private static void tell(String what, List<Step> steps) {
        double[] times = steps.stream().mapToDouble(Step::millis).sorted().toArray();
        List<String> errors = steps.stream()
                .map(Step::error)
                .filter(error -> !error.isEmpty())
                .toList();
        LOG.log(Level.INFO, String.format(
                "| %s | %d | %.0f | %.0f | %.0f | %d |",
                what,
                times.length,
                times[times.length / 2],
                times[times.length * 95 / 100],
                times[times.length - 1],
                errors.size()));
        errors.stream().limit(3).forEach(error -> LOG.log(Level.INFO, error));
    }

    private static List<Step> day(Random random, long end) throws Exception {
        List<Step> steps = new ArrayList<>();
        Thread.sleep(random.nextInt(5000));
        Visitor visitor = Settings.visitor("many");
        while (System.nanoTime() < end) {
            steps.add(step(visitor, random));
            Thread.sleep(1000 + random.nextInt(4000));
        }
        return steps;
    }

    private static Step step(Visitor visitor, Random random) throws InterruptedException {
        int machine = 1 + random.nextInt(MACHINES);
        int test = (machine - 1) * TESTS_A_MACHINE + 1 + random.nextInt(TESTS_A_MACHINE);
        int luck = random.nextInt(200);
        long start = System.nanoTime();
        String what = luck == 0 ? "file of a machine" : luck <= 10 ? "record a test" : page(luck, machine, test)[0];
        try {
            if (luck == 0) {
                visitor.download("/export/tests.csv?compressor=" + machine);
            } else if (luck <= 10) {
                record(visitor, machine, test);
            } else {
                visitor.millis(page(luck, machine, test)[1]);
            }
            return new Step(what, (System.nanoTime() - start) / 1e6, "");
        } catch (IOException | IllegalStateException failure) {
            return new Step(what, (System.nanoTime() - start) / 1e6, String.valueOf(failure));
        }
    }

    private static String[] page(int luck, int machine, int test) {
        return switch (luck % 8) {
            case 0 -> new String[] {"overview", "/"};
            case 1, 2 -> new String[] {"machine", "/compressors/" + machine};
            case 3, 4 -> new String[] {"test", "/tests/" + test};
            case 5 -> new String[] {"list of tests", "/tests?page=" + (1 + test % LIST_PAGES)};
            case 6 -> new String[] {"what is due", "/due"};
            default -> new String[] {"form of a test", "/compressors/" + machine + "/tests/new"};
        };
    }

    /** The readings of an earlier test once more, a day later than all of them, as a person would type them. */
    private static void record(Visitor visitor, int machine, int earlier) throws IOException, InterruptedException {
        Document page = Jsoup.parse(visitor.text("/tests/" + earlier + "/supersede"));
        Map<String, String> form = new HashMap<>();
        for (Connection.KeyVal field : ((FormElement) page.selectFirst("main form[method=post]")).formData()) {
            form.put(field.key(), field.value());
        }
        form.put("submission", UUID.randomUUID().toString());
        form.put("date", "2026-06-01");
        form.putIfAbsent("receivers", page.select("input[name=receivers]").attr("value"));
        String address = "/compressors/" + machine + "/tests";
        Document answer = Jsoup.parse(visitor.send(address, form));
        Element tick = answer.selectFirst("input[name=confirmed][type=checkbox]");
        if (tick != null) {
            form.put("confirmed", tick.attr("value"));
            answer = Jsoup.parse(visitor.send(address, form));
        }
        if (!answer.select("main form[action=" + address + "]").isEmpty()) {
            throw new IllegalStateException("not recorded: " + answer.select("[role=alert], .error").text());
        }
    }
}
