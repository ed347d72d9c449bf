package plantair.pumpup;

import java.util.List;

/**
 * One step of the working: an equation with the numbers in it, the last figure being its result.
 *
 * @param equation its number in docs/method.md, with a letter where an equation takes more than one step
 * @param run the run it belongs to, from 1; 0 for a step of the whole test
 * @param label what it is about where an equation is used more than once, else empty
 * @param figures the numbers, the result last
 */
public record WorkingStep(String equation, int run, String label, List<Figure> figures) {}
