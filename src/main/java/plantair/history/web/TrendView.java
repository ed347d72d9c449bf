package plantair.history.web;

import java.util.List;
import plantair.web.Status;

/**
 * What the tests of a machine say, in words.
 *
 * @param word word and shape of the trend
 * @param text the sentence behind the word, with its numbers
 * @param notes what belongs beside it
 * @param standing word and shape of the standing against the limits
 * @param standingText the sentence behind that word
 */
public record TrendView(Status word, String text, List<Note> notes, Status standing, String standingText) {

    /** A note: its code, its sentence, and the tests that it is about. */
    public record Note(String code, String text, List<TestLink> tests) {}
}
