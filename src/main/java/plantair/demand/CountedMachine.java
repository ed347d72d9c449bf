package plantair.demand;

import plantair.supply.CapacityPart;
import plantair.testrecord.MeasuredOutput;

/**
 * A machine that counts for the capacity of its site.
 *
 * @param id of the compressor
 * @param tag how the plant calls it
 * @param output as it was measured
 * @param part the same at the pressure of the site
 */
public record CountedMachine(long id, String tag, MeasuredOutput output, CapacityPart part) {}
