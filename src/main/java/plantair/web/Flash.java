package plantair.web;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * A message on the page after a redirect.
 *
 * @param code message key
 * @param args arguments of the text, formatted already
 * @param next where the message leads; null when nowhere
 */
public record Flash(
        String code, List<Object> args, @Nullable Link next) implements Serializable {

    /**
     * What to do next.
     *
     * @param href address within this site
     * @param code message key of its text
     */
    public record Link(String href, String code) implements Serializable {}

    /** Shows the message on the next page. */
    public static void say(RedirectAttributes redirect, String code, Object... args) {
        redirect.addFlashAttribute("flash", new Flash(code, List.of(args), null));
    }

    /** Shows the message on the next page, with a link behind it. */
    public static void lead(RedirectAttributes redirect, String code, Link next) {
        redirect.addFlashAttribute("flash", new Flash(code, List.of(), next));
    }

    /** The arguments as the message lookup of a template takes them. */
    public Object[] arguments() {
        return args.toArray();
    }
}
