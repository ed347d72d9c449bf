package plantair.history.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The baseline of a machine.
 *
 * @param inForce the test that newer ones are compared with; null without one
 * @param choices every choice made, newest first; none while it is the first test that joins the trend
 */
public record BaselineView(@Nullable TestLink inForce, List<ChoiceRow> choices) {

    /**
     * A choice.
     *
     * @param test the test chosen
     * @param chosenOn day of the choice, at the site
     * @param by who chose
     * @param reason why
     * @param event the work behind it, empty when there was none
     * @param state key of the word for what it is now
     */
    public record ChoiceRow(TestLink test, String chosenOn, String by, String reason, String event, String state) {}
}
