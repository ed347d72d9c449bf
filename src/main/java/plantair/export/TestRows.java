package plantair.export;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Rows of the file of tests. What is the same in every run of a test is turned into text once. */
final class TestRows {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180;
    private static final List<Block> BLOCKS = blocks();

    private TestRows() {}

    /** Columns beside each other that all differ between the runs of a test, or all do not. */
    private record Block(boolean isOfRun, List<TestColumn> columns) {}

    private static List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        for (TestColumn column : TestColumns.ALL) {
            if (blocks.isEmpty() || blocks.get(blocks.size() - 1).isOfRun != column.isOfRun()) {
                blocks.add(new Block(column.isOfRun(), new ArrayList<>()));
            }
            blocks.get(blocks.size() - 1).columns.add(column);
        }
        return List.copyOf(blocks);
    }

    static String header() throws IOException {
        var text = new StringBuilder();
        new CSVPrinter(text, FORMAT)
                .printRecord(TestColumns.ALL.stream().map(TestColumn::header).toList());
        return text.toString();
    }

    /**
     * The rows of some tests.
     *
     * @param tests the runs of each
     */
    static String of(List<List<TestRun>> tests) throws IOException {
        var text = new StringBuilder();
        var printer = new CSVPrinter(text, FORMAT);
        // a first cell, so that each one after it gets a comma before it and no more quotes than needed
        printer.print("");
        text.setLength(0);
        for (List<TestRun> runs : tests) {
            append(runs, printer, text);
        }
        return text.toString();
    }

    private static void append(List<TestRun> runs, CSVPrinter printer, StringBuilder text) throws IOException {
        TestRun test = runs.get(0).ofNoRun();
        List<String> same = new ArrayList<>();
        int end = text.length();
        for (Block block : BLOCKS) {
            if (!block.isOfRun) {
                print(block, test, printer, text);
            }
            same.add(text.substring(end));
            text.setLength(end);
        }
        for (TestRun run : runs) {
            int start = text.length();
            for (int i = 0; i < same.size(); i++) {
                Block block = BLOCKS.get(i);
                if (block.isOfRun) {
                    print(block, run, printer, text);
                } else {
                    text.append(same.get(i));
                }
            }
            text.deleteCharAt(start).append(FORMAT.getRecordSeparator()); // the comma of the first cell
        }
    }

    /** Most columns are numbers; to look through each of them for what would need quotes takes a fifth of the time it takes to print them. */
    private static void print(Block block, TestRun run, CSVPrinter printer, StringBuilder text) throws IOException {
        for (TestColumn column : block.columns) {
            String cell = column.value().apply(run);
            if (column.isPlain()) {
                text.append(FORMAT.getDelimiterString()).append(cell);
            } else {
                printer.print(cell);
            }
        }
    }
}
