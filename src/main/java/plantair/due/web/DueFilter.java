package plantair.due.web;

/** Form bean: what the due list shows. */
final class DueFilter {

    private String site = "";
    private String kind = "";
    private String state = "";

    public String getSite() {
        return site;
    }

    public void setSite(String site) {
        this.site = site;
    }

    public String getKind() {
        return kind;
    }

    public void setKind(String kind) {
        this.kind = kind;
    }

    public String getState() {
        return state;
    }

    public void setState(String state) {
        this.state = state;
    }
}
