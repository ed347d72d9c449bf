package plantair.transfer;

import plantair.testrecord.TestDraft;

/**
 * A test of a log whose every cell could be understood.
 *
 * @param label how the log calls it
 * @param line where it begins
 * @param draft the test
 * @param corrects label of the test that it corrects; empty when it corrects none
 * @param reason why it corrects that one, may be empty
 */
record LoggedTest(String label, long line, TestDraft draft, String corrects, String reason) {}
