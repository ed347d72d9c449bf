package plantair.history.web;

import plantair.testrecord.ResultLine;

/**
 * A test to be linked to.
 *
 * @param id of the test
 * @param date its day
 */
public record TestLink(long id, String date) {

    static TestLink of(ResultLine test) {
        return new TestLink(test.testId(), test.date().toString());
    }
}
