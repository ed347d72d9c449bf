package plantair.trend;

import java.time.LocalDate;
import plantair.trend.SharedError.Cause;

/**
 * A gauge, receiver or way of testing that changed inside the record (T7).
 *
 * @param since day of the first test with the other one
 * @param cause what changed
 * @param relativeU relative standard uncertainty of the shift that the trend allows for
 */
public record SourceChange(LocalDate since, Cause cause, double relativeU) {}
