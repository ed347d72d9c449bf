package plantair.leak;

/**
 * A finding on a fall of pressure.
 *
 * @param code which
 * @param number what its code says; zero where it says none
 */
public record LeakFinding(LeakCode code, double number) {}
