package plantair.web;

/**
 * One line of a choice list.
 *
 * @param code what the form sends
 * @param label what the reader sees
 */
public record Choice(String code, String label) {}
