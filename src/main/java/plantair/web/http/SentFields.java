package plantair.web.http;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a person sent with a form that could not be saved, to be shown and, when it is whole, to be sent once more. What
 * nobody else may see is left out, and then it is not whole.
 *
 * @param fields in the order they came
 * @param isWhole whether sending them again is the same request
 */
record SentFields(List<Field> fields, boolean isWhole) {

    private static final List<String> SECRET = List.of("password", "secret", "code", "current", "again");

    /** One field as it was sent. */
    record Field(String name, String value) {

        /** Whether a person typed or chose it and may want to read it. */
        public boolean isReadable() {
            return !value.isBlank() && !name.equals("submission") && !name.equals("confirmed");
        }
    }

    static SentFields of(HttpServletRequest request) {
        List<Field> fields = new ArrayList<>();
        boolean whole = request.getMethod().equals("POST");
        for (var parameter : request.getParameterMap().entrySet()) {
            String name = parameter.getKey();
            if (SECRET.stream().anyMatch(name.toLowerCase(Locale.ROOT)::contains)) {
                whole = false;
            } else if (!name.startsWith("_")) {
                for (String value : parameter.getValue()) {
                    fields.add(new Field(name, value));
                }
            }
        }
        return new SentFields(request.getMethod().equals("POST") ? List.copyOf(fields) : List.of(), whole);
    }

    /** Those for a person's eyes. */
    public List<Field> readable() {
        return fields.stream().filter(Field::isReadable).toList();
    }
}
