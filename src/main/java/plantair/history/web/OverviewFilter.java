package plantair.history.web;

/** Form bean: which machines the overview shows. */
public final class OverviewFilter {

    /** Whether retired machines are shown. */
    enum Show {
        IN_SERVICE,
        ALL
    }

    private String site = "";
    private String standing = "";
    private String show = Show.IN_SERVICE.name();

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
