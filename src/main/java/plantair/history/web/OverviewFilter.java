package plantair.history.web;

import org.springframework.web.util.UriComponentsBuilder;

/** Form bean: which machines the overview shows. */
public final class OverviewFilter {

    /** Whether retired machines are shown. */
    enum Show {
        IN_SERVICE,
        ALL
    }

    private String tag = "";
    private String site = "";
    private String standing = "";
    private String show = Show.IN_SERVICE.name();

    /** Address of the overview with all that was asked for. */
    String address() {
        return UriComponentsBuilder.fromPath("/")
                .queryParam("tag", "{tag}")
                .queryParam("site", "{site}")
                .queryParam("standing", "{standing}")
                .queryParam("show", "{show}")
                .encode()
                .buildAndExpand(tag, site, standing, show)
                .toUriString();
    }

    public String getTag() {
        return tag;
    }

    public void setTag(String tag) {
        this.tag = tag;
    }

    public String getSite() {
        return site;
    }

    public void setSite(String site) {
        this.site = site;
    }

    public String getStanding() {
        return standing;
    }

    public void setStanding(String standing) {
        this.standing = standing;
    }

    public String getShow() {
        return show;
    }

    public void setShow(String show) {
        this.show = show;
    }
}
