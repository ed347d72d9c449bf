package plantair.trend;

import plantair.quantity.FlowRate;

/**
 * A test beside what the tests before it led to expect (T10).
 *
 * @param code how it fits
 * @param expected flow that the earlier tests foretold
 * @param low lower end of the 95 % interval for a new test
 * @param high upper end of the 95 % interval for a new test
 * @param probability of a difference as large by chance, between 0 and 1
 */
public record NewResult(Code code, FlowRate expected, FlowRate low, FlowRate high, double probability) {

    /** How a test fits the ones before. */
    public enum Code {
        /** Probability above 5 %. */
        IN_LINE,
        /** Between 1 and 5 %. */
        WORTH_REPEATING,
        /** Below 1 %. */
        OUT_OF_LINE
    }
}
