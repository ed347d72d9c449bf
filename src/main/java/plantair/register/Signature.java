package plantair.register;

/**
 * Who enters something in a register, and why.
 *
 * @param by name of the person
 * @param reason in the person's words
 */
public record Signature(String by, String reason) {}
