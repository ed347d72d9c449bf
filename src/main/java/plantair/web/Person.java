package plantair.web;

/**
 * Who is at the screen, as far as this browser remembers. No proof of identity. A controller takes it as a parameter.
 *
 * @param name the name typed last as "who"; empty when none is remembered
 */
public record Person(String name) {}
