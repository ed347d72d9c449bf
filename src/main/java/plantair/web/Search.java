package plantair.web;

import java.util.Map;
import org.springframework.web.util.UriComponentsBuilder;

/** Form bean of a list that is searched by a part of a name, for {@code fragments/search}. */
public final class Search {

    private String find = "";

    /** The part of a name that is looked for, for a query that takes it as it is; nothing is in every name. */
    public String part() {
        return find.strip();
    }

    /** Whether anything is looked for. */
    public boolean isAsked() {
        return !find.isBlank();
    }

    /** Address of the list with what is looked for, to turn its pages. */
    public String address(String list) {
        return isAsked()
                ? UriComponentsBuilder.fromPath(list)
                        .queryParam("find", "{find}")
                        .encode()
                        .buildAndExpand(Map.of("find", find))
                        .toUriString()
                : list;
    }

    public String getFind() {
        return find;
    }

    public void setFind(String find) {
        this.find = find;
    }
}
