package plantair.register.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import org.springframework.validation.Errors;
import org.springframework.web.util.UriComponentsBuilder;
import plantair.register.ChangeKind;
import plantair.web.FieldChecks;

/** Form bean: which lines of the change log are shown. */
public final class ChangesForm {

    private String kind = "";
    private String person = "";
    private String name = "";
    private String from = "";
    private String to = "";

    /**
     * What was asked for, readable for a database.
     *
     * @param kind changes of this kind; empty for all
     * @param person part of the name
     * @param name the same
     * @param until first moment that is too late
     */
    record Filter(Optional<ChangeKind> kind, String person, String name, Instant from, Instant until) {}

    /** Reads the form; what cannot be read is told beside its field and asks for nothing. */
    Filter read(Errors errors) {
        var checks = new FieldChecks(errors);
        var one = checks.optionalChoice("kind", kind, ChangeKind.class);
        var first = checks.date("from", from, false).orElse(LocalDate.of(1000, 1, 1));
        var last = checks.date("to", to, false).orElse(LocalDate.of(9999, 1, 1));
        if (last.isBefore(first)) {
            errors.rejectValue("to", "changes.to.beforeFrom");
        }
        return new Filter(one, person.strip(), name.strip(), start(first), start(last.plusDays(1)));
    }

    private static Instant start(LocalDate day) {
        return day.atStartOfDay().toInstant(ZoneOffset.UTC);
    }

    /** Address of the list with all that was asked for. */
    String address() {
        var address = UriComponentsBuilder.fromPath("/changes");
        String[][] asked = {{"kind", kind}, {"person", person}, {"name", name}, {"from", from}, {"to", to}};
        for (String[] one : asked) {
            if (!one[1].isBlank()) {
                address.queryParam(one[0], "{" + one[0] + "}");
            }
        }
        return address.encode()
                .buildAndExpand(Map.of("kind", kind, "person", person, "name", name, "from", from, "to", to))
                .toUriString();
    }

    public String getKind() {
        return kind;
    }

    public void setKind(String kind) {
        this.kind = kind;
    }

    public String getPerson() {
        return person;
    }

    public void setPerson(String person) {
        this.person = person;
    }

    public String getName() {
        return name;
    }

    public void setName(String name) {
        this.name = name;
    }

    public String getFrom() {
        return from;
    }

    public void setFrom(String from) {
        this.from = from;
    }

    public String getTo() {
        return to;
    }

    public void setTo(String to) {
        this.to = to;
    }
}
