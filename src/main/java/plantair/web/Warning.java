package plantair.web;

import java.util.List;

/**
 * A thing that may be true but is odd enough to be confirmed before it is saved.
 *
 * @param path the form field beside which it stands
 * @param code message key of its text
 * @param args arguments of the text, formatted already
 */
public record Warning(String path, String code, List<Object> args) {

    /** Copies the arguments. */
    public Warning {
        args = List.copyOf(args);
    }

    /** The arguments as the message lookup of a template takes them. */
    public Object[] arguments() {
        return args.toArray();
    }
}
