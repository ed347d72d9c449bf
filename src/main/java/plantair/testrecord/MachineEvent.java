package plantair.testrecord;

import java.time.LocalDate;

/**
 * What the trend has to know of a maintenance event.
 *
 * @param date its day; a test of that day counts as after it
 * @param mayStep whether it may have changed the output
 * @param gaugeChanged whether another gauge was fitted
 */
public record MachineEvent(LocalDate date, boolean mayStep, boolean gaugeChanged) {}
