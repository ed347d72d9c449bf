package plantair.history.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What waiting costs, all text ready.
 *
 * @param compressorId the machine
 * @param siteId its site
 * @param state key of the sentence that says where the figures come from, or why there are none
 * @param money a year with its currency; null when it cannot be stated
 * @param facts what can be stated, key of the label and text
 * @param missing keys of what would have to be known for a cost in money; empty when all is known
 * @param powerReadOn day of the test that read the power; null when none did
 */
public record CostView(
        long compressorId,
        long siteId,
        String state,
        @Nullable String money,
        List<Fact> facts,
        List<String> missing,
        @Nullable String powerReadOn) {

    /** A figure: key of its label, and its text. */
    public record Fact(String label, String text) {}
}
