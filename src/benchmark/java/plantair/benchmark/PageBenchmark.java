package plantair.benchmark;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Times of pages of two running programs, one with few tests and one with many, asked in turn so that whatever else the
 * machine does falls on both; then how many a second several visitors get. Prints a table, see docs/performance.md.
 */
public final class PageBenchmark {

    private static final Logger LOG = System.getLogger("benchmark");
    private static final int WARM = 40;
    private static final int MEASURED = 100;
    private static final int VISITORS = 4;
    private static final long STRETCH_NS = 10_000_000_000L;

    /** Machine 7 and test 77 are of one kind in every made group of the same number of tests a machine. */
    private static final String PAGES = "/ /compressors/7 /tests/77 /tests /tests?page=200 /due /changes /receivers /instruments"
            + " /export /tests/new /guided /compressors/7/tests/new";

    private PageBenchmark() {}

    /** Compares the programs {@code benchmark.few} and {@code benchmark.many}; {@code benchmark.pages} may name the pages. */
    public static void main(String[] arguments) throws Exception {
        List<Visitor> few = visitors("few");
        List<Visitor> many = visitors("many");
        LOG.log(Level.INFO, "| page | few: median, 95th (ms) | many: median, 95th (ms) | ratio | few: a second | many: a second |");
        for (String page : Settings.or("pages", PAGES).split(" ")) {
            compare(page, few, many);
        }
    }

    private static List<Visitor> visitors(String program) throws Exception {
        List<Visitor> visitors = new ArrayList<>();
        for (int i = 0; i < VISITORS; i++) {
            visitors.add(Settings.visitor(program));
        }
        return visitors;
    }

    private static void compare(String page, List<Visitor> few, List<Visitor> many) throws Exception {
        for (int i = 0; i < WARM; i++) {
            few.get(0).millis(page);
            many.get(0).millis(page);
        }
        double[] ofFew = new double[MEASURED];
        double[] ofMany = new double[MEASURED];
        for (int i = 0; i < MEASURED; i++) {
            ofFew[i] = few.get(0).millis(page);
            ofMany[i] = many.get(0).millis(page);
        }
        Arrays.sort(ofFew);
        Arrays.sort(ofMany);
        LOG.log(Level.INFO, "| {0} | {1} | {2} | {3} | {4} | {5} | {6} |", page, line(ofFew), line(ofMany), String.format(
                "%.2f", median(ofMany) / median(ofFew)), kilobytes(page, few) + ", " + kilobytes(page, many), String.format(
                "%.0f", aSecond(page, few)), String.format("%.0f", aSecond(page, many)));
    }

    /** A page of the smaller group may have fewer lines: the list of its receivers is shorter than a page. */
    private static long kilobytes(String page, List<Visitor> visitors) throws Exception {
        return Math.round(visitors.get(0).text(page).length() / 1e3);
    }

    private static String line(double[] sorted) {
        return String.format("%.1f, %.1f", median(sorted), sorted[MEASURED * 95 / 100]);
    }

    private static double median(double[] sorted) {
        return (sorted[MEASURED / 2 - 1] + sorted[MEASURED / 2]) / 2;
    }

    /** Answers a second to all visitors together, each of whom asks again as soon as he has an answer. */
    private static double aSecond(String page, List<Visitor> visitors) throws InterruptedException, ExecutionException {
        var threads = Executors.newFixedThreadPool(visitors.size());
        long end = System.nanoTime() + STRETCH_NS;
        List<Callable<Integer>> work = new ArrayList<>();
        for (Visitor visitor : visitors) {
            work.add(() -> {
                int count = 0;
                while (System.nanoTime() < end) {
                    visitor.millis(page);
                    count++;
                }
                return count;
            });
        }
        int all = 0;
        for (Future<Integer> count : threads.invokeAll(work)) {
            all += count.get();
        }
        threads.shutdown();
        return all / (STRETCH_NS / 1e9);
    }
}
