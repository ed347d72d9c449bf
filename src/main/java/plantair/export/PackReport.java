package plantair.export;

import java.util.List;

/**
 * What the report of an audit pack says, as text.
 *
 * @param tag the machine
 * @param site its site
 * @param from first day; empty for no limit
 * @param to last day; empty for no limit
 * @param madeAt when the report was made, UTC
 * @param plate its plate, fact by fact
 * @param receivers what was pumped up in the tests of the period
 * @param methods versions of the method in these tests
 * @param baseline the test that is the baseline now; empty without one
 * @param tests the tests of the period, oldest first
 * @param events what was done in the period
 * @param choices baselines chosen
 * @param papers photos and papers
 */
public record PackReport(
        String tag,
        String site,
        String from,
        String to,
        String madeAt,
        List<String> plate,
        List<String> receivers,
        String methods,
        String baseline,
        List<Test> tests,
        List<Event> events,
        List<String> choices,
        List<Paper> papers) {

    public PackReport {
        plate = List.copyOf(plate);
        receivers = List.copyOf(receivers);
        tests = List.copyOf(tests);
        events = List.copyOf(events);
        choices = List.copyOf(choices);
        papers = List.copyOf(papers);
    }

    /**
     * A test.
     *
     * @param id its number
     * @param at day and time at the site
     * @param tester who made it
     * @param flow free air delivered and its standard uncertainty; empty when the runs were not averaged
     * @param ofBaseline percent of the baseline; empty when it is not compared
     * @param findings codes of its findings
     * @param instruments instruments, with certificate and last day
     * @param standing superseded by which test and why, corrects which and why, restated by what; empty lines left out
     */
    public record Test(
            long id,
            String at,
            String tester,
            String flow,
            String ofBaseline,
            String findings,
            List<String> instruments,
            List<String> standing) {

        public Test {
            instruments = List.copyOf(instruments);
            standing = List.copyOf(standing);
        }
    }

    /**
     * Work done.
     *
     * @param day when
     * @param kind what
     * @param by who did it
     * @param note what was noted
     * @param standing corrected or withdrawn, by which entry
     */
    public record Event(String day, String kind, String by, String note, String standing) {}

    /**
     * A photo or paper.
     *
     * @param shows what is on it
     * @param file name, format and size
     * @param of record that it belongs to
     * @param attached when and by whom
     * @param sha256 digest of its bytes
     * @param withdrawn when, by whom and why it was withdrawn; empty while it stands
     */
    public record Paper(String shows, String file, String of, String attached, String sha256, String withdrawn) {}
}
