package planted.quantity;

import java.util.Locale;

/** A pure class that knows a locale. */
public class KnowsLocale {

    Locale locale = Locale.ROOT;
}
