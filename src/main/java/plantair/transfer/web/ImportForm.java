package plantair.transfer.web;

/** Form bean: who takes the file in. */
public final class ImportForm {

    private String by = "";

    public String getBy() {
        return by;
    }

    public void setBy(String by) {
        this.by = by;
    }
}
