package plantair.transfer.web;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.springframework.context.MessageSource;
import plantair.transfer.Findings;
import plantair.transfer.Import;
import plantair.transfer.Remark;
import plantair.transfer.Remarks;

/**
 * An upload as its page shows it.
 *
 * @param id its key in addresses
 * @param name name of the file
 * @param stage where it is
 * @param progress tests done in this stage
 * @param recorded tests taken in
 * @param tests tests that are new
 * @param known tests that are in the records already
 * @param machines site and tag of each machine with new tests, the first fifty
 * @param machineCount how many there are
 * @param problems what must be put right, the first of them
 * @param problemCount how many there are
 * @param notes what is worth knowing, the first of them
 * @param noteCount how many there are
 */
public record ImportView(
        String id,
        String name,
        String stage,
        long progress,
        long recorded,
        long tests,
        long known,
        List<String> machines,
        int machineCount,
        List<Line> problems,
        long problemCount,
        List<Line> notes,
        long noteCount) {

    private static final int MACHINES = 50;
    private static final Set<String> BUSY = Set.of("WAITING", "CHECKING", "ORDERED", "RECORDING");

    /**
     * A remark.
     *
     * @param file name of the file
     * @param line line in it; empty for the whole file
     * @param column column; empty for the whole line
     * @param text what is to be said
     */
    public record Line(String file, String line, String column, String text) {}

    static ImportView of(Import one, MessageSource messages, Locale locale) {
        Findings found = one.findings() == null ? new Findings() : one.findings();
        return new ImportView(
                one.id().toString(),
                one.name(),
                one.stage().name(),
                one.progress(),
                one.recorded(),
                found.tests(),
                found.known(),
                found.machines().stream().limit(MACHINES).toList(),
                found.machines().size(),
                lines(found.problems(), messages, locale),
                found.problems().count(),
                lines(found.notes(), messages, locale),
                found.notes().count());
    }

    /** Whether the page has to be asked for again to see more. */
    public boolean isBusy() {
        return BUSY.contains(stage);
    }

    /** Whether it waits for the word, and nothing speaks against it. */
    public boolean isReady() {
        return stage.equals("CHECKED") && problemCount == 0 && tests > 0;
    }

    /** Whether it ended with the instance that was at it, and can be begun again. */
    public boolean isBrokenOff() {
        return stage.equals("BROKEN_OFF");
    }

    private static List<Line> lines(Remarks remarks, MessageSource messages, Locale locale) {
        return remarks.first().stream()
                .map(remark -> line(remark, messages, locale))
                .toList();
    }

    private static Line line(Remark remark, MessageSource messages, Locale locale) {
        return new Line(
                remark.file(),
                remark.line() == 0 ? "" : String.valueOf(remark.line()),
                remark.column(),
                messages.getMessage(remark.words(), locale));
    }
}
