package plantair.benchmark;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Many pages of two running programs on equal records, one after the other in an order that changes: what a page takes when it
 * is not the one asked for just before. {@link PageBenchmark} asks one page again and again, so that every cache holds it.
 */
public final class ManyPagesBenchmark {

    private static final Logger LOG = System.getLogger("benchmark");
    private static final int WARM = 20;
    private static final int MEASURED = 20;

    private static final String PAGES = "/ /tests /tests?site=1 /compressors/1 /compressors/2 /tests/1 /tests/2 /tests/3/report"
            + " /compressors/1/tests/new /compressors/1/edit /receivers /receivers/1 /receivers/1/edit /instruments"
            + " /instruments/1/edit /pipes /sites /sites/1 /due /export /changes /import /compressors/new"
            + " /receivers/new /instruments/new /account /audit /compressors/1/sheet /sites/1/supply /sites/1/demand"
            + " /sites/1/cost /sites/1/storage";

    private ManyPagesBenchmark() {}

    /** Compares {@code benchmark.many} with {@code benchmark.few}; both must have every page that {@code benchmark.pages} names. */
    public static void main(String[] arguments) throws Exception {
        Visitor few = Settings.visitor("few");
        Visitor many = Settings.visitor("many");
        List<String> pages = List.of(Settings.or("pages", PAGES).split(" "));
        double[][] ofFew = new double[pages.size()][MEASURED];
        double[][] ofMany = new double[pages.size()][MEASURED];
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            order.add(i);
        }
        var random = new Random(7);
        for (int round = 0; round < WARM + MEASURED; round++) {
            Collections.shuffle(order, random);
            for (int i : order) {
                int at = Math.max(0, round - WARM); // what is too early is written over
                ofFew[i][at] = few.millis(pages.get(i));
                ofMany[i][at] = many.millis(pages.get(i));
            }
        }
        double allOfFew = 0;
        double allOfMany = 0;
        for (int i = 0; i < pages.size(); i++) {
            double fewMedian = median(ofFew[i]);
            double manyMedian = median(ofMany[i]);
            allOfFew += fewMedian;
            allOfMany += manyMedian;
            LOG.log(Level.INFO, String.format("%s: %.1f, %.1f ms", pages.get(i), fewMedian, manyMedian));
        }
        LOG.log(Level.INFO, String.format(
                "%d pages: few %.0f ms, many %.0f ms, ratio %.2f",
                pages.size(), allOfFew, allOfMany, allOfMany / allOfFew));
    }

    private static double median(double[] millis) {
        Arrays.sort(millis);
        return millis[millis.length / 2];
    }
}
