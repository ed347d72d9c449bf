package plantair.runlog.web;

import java.util.UUID;
import plantair.runlog.LogChoices;

/** Form bean of how a logger's file is read. */
public final class LogForm {

    private String submission = "";
    private String separator = "";
    private String decimalMark = "";
    private String skippedLines = "";
    private String leaveOut = "";
    private String dayColumn = "";
    private String timeColumn = "";
    private String timeFormat = "";
    private String pressureColumn = "";
    private String pressureUnit = "";
    private String reference = "";
    private String logger = "";
    private String anywhere = "";
    private String note = "";

    static LogForm of(LogChoices guess) {
        var form = new LogForm();
        form.submission = UUID.randomUUID().toString();
        form.separator = guess.separator().name();
        form.decimalMark = guess.decimalMark().name();
        form.skippedLines = String.valueOf(guess.skippedLines());
        form.dayColumn = guess.dayColumn() == null ? "" : String.valueOf(guess.dayColumn());
        form.timeColumn = String.valueOf(guess.timeColumn());
        form.timeFormat = guess.timeFormat().name();
        form.pressureColumn = String.valueOf(guess.pressureColumn());
        form.pressureUnit = guess.pressureUnit();
        form.reference = guess.reference().name();
        return form;
    }

    /** A browser keeps no chosen file; only what is wrong with it stands beside its field. */
    public String getFile() {
        return "";
    }

    public String getSubmission() {
        return submission;
    }

    public void setSubmission(String submission) {
        this.submission = submission;
    }

    public String getSeparator() {
        return separator;
    }

    public void setSeparator(String separator) {
        this.separator = separator;
    }

    public String getDecimalMark() {
        return decimalMark;
    }

    public void setDecimalMark(String decimalMark) {
        this.decimalMark = decimalMark;
    }

    public String getSkippedLines() {
        return skippedLines;
    }

    public void setSkippedLines(String skippedLines) {
        this.skippedLines = skippedLines;
    }

    public String getLeaveOut() {
        return leaveOut;
    }

    public void setLeaveOut(String leaveOut) {
        this.leaveOut = leaveOut;
    }

    public String getDayColumn() {
        return dayColumn;
    }

    public void setDayColumn(String dayColumn) {
        this.dayColumn = dayColumn;
    }

    public String getTimeColumn() {
        return timeColumn;
    }

    public void setTimeColumn(String timeColumn) {
        this.timeColumn = timeColumn;
    }

    public String getTimeFormat() {
        return timeFormat;
    }

    public void setTimeFormat(String timeFormat) {
        this.timeFormat = timeFormat;
    }

    public String getPressureColumn() {
        return pressureColumn;
    }

    public void setPressureColumn(String pressureColumn) {
        this.pressureColumn = pressureColumn;
    }

    public String getPressureUnit() {
        return pressureUnit;
    }

    public void setPressureUnit(String pressureUnit) {
        this.pressureUnit = pressureUnit;
    }

    public String getReference() {
        return reference;
    }

    public void setReference(String reference) {
        this.reference = reference;
    }

    /** Not blank when gauges of every site are offered. */
    public String getAnywhere() {
        return anywhere;
    }

    public void setAnywhere(String anywhere) {
        this.anywhere = anywhere;
    }

    public String getLogger() {
        return logger;
    }

    public void setLogger(String logger) {
        this.logger = logger;
    }

    public String getNote() {
        return note;
    }

    public void setNote(String note) {
        this.note = note;
    }
}
