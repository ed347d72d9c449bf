package plantair.due.web;

/** Of which site a new calendar address is to tell. */
final class CalendarForm {

    private String site = "";

    public String getSite() {
        return site;
    }

    public void setSite(String site) {
        this.site = site;
    }
}
