package plantair.api;

/**
 * What is wrong with one field of a request.
 *
 * @param field its path, {@code runs[0].stop}; empty for the request as a whole
 * @param code what is wrong, for programs
 * @param message the same in words
 */
record FieldProblem(String field, String code, String message) {}
