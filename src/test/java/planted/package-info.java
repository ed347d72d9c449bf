/**
 * Faults on purpose. Each class breaks one rule of PurityTests, CodingRulesTests or ModularityTests, so that a rule that
 * cannot fail is found. They stand outside the root package of the program, where nothing scans for them.
 */
package planted;
