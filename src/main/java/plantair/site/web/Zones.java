package plantair.site.web;

import java.time.ZoneId;
import java.util.List;
import plantair.web.Choice;

/** The time zones that a site may have: named after a place, so that their rules for summer time are known. */
final class Zones {

    static final String DEFAULT = "UTC";

    private static final List<Choice> CHOICES = ZoneId.getAvailableZoneIds().stream()
            .filter(Zones::isPlace)
            .sorted()
            .map(id -> new Choice(id, id.replace('_', ' ')))
            .toList();

    private Zones() {}

    static List<Choice> choices() {
        return CHOICES;
    }

    static boolean isKnown(String id) {
        return CHOICES.stream().anyMatch(choice -> choice.code().equals(id));
    }

    private static boolean isPlace(String id) {
        return id.equals(DEFAULT) || id.indexOf('/') > 0 && !id.startsWith("Etc/") && !id.startsWith("SystemV/");
    }
}
