package plantair.web;

import java.io.Serializable;
import java.util.List;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * A message on the page after a redirect.
 *
 * @param code message key
 * @param args arguments of the text, formatted already
 */
public record Flash(String code, List<Object> args) implements Serializable {

    /** Shows the message on the next page. */
    public static void say(RedirectAttributes redirect, String code, Object... args) {
        redirect.addFlashAttribute("flash", new Flash(code, List.of(args)));
    }

    /** The arguments as the message lookup of a template takes them. */
    public Object[] arguments() {
        return args.toArray();
    }
}
