package plantair.history;

import java.util.List;
import java.util.Map;
import plantair.pumpup.PumpUpResult;

/**
 * Some of many machines.
 *
 * @param machines those shown
 * @param results the whole result of the last test of each, by test id
 * @param total how many there are in all
 */
public record MachinePage(List<Machine> machines, Map<Long, PumpUpResult> results, long total) {}
