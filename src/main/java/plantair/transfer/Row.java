package plantair.transfer;

import java.util.Map;

/**
 * A row of a CSV file.
 *
 * @param file name of the file
 * @param line where it begins, from 1
 * @param cells by the name of their column
 */
record Row(String file, long line, Map<String, String> cells) {

    /** A cell; empty where the file has no such column. */
    String cell(String column) {
        return cells.getOrDefault(column, "");
    }
}
