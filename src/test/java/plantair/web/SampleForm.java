package plantair.web;

import java.util.ArrayList;
import java.util.List;
import plantair.quantity.DurationUnit;
import plantair.quantity.FixedUnit;
import plantair.quantity.PressureUnit;

/** A form bean with every kind of field. */
public final class SampleForm {

    private String name = "";
    private String notes = "";
    private String kind = "";
    private String state = "";
    private String day = "";
    private String hour = "";
    private String stages = "";
    private String agreed = "";
    private List<String> receivers = new ArrayList<>();
    private String version = "7";
    private String confirmed = "";
    private EnteredField humidity = EnteredField.blank(FixedUnit.PERCENT);
    private List<SampleRun> runs = new ArrayList<>(List.of(new SampleRun(), new SampleRun()));

    /** One row of the form. */
    public static final class SampleRun {

        private EnteredField start = EnteredField.blank(PressureUnit.PSI);
        private EnteredField time = EnteredField.blank(DurationUnit.SECOND);

        public EnteredField getStart() {
            return start;
        }

        public void setStart(EnteredField start) {
            this.start = start;
        }

        public EnteredField getTime() {
            return time;
        }

        public void setTime(EnteredField time) {
            this.time = time;
        }
    }

    public String getName() {
        return name;
    }

    public void setName(String name) {
        this.name = name;
    }

    public String getNotes() {
        return notes;
    }

    public void setNotes(String notes) {
        this.notes = notes;
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

    public String getDay() {
        return day;
    }

    public void setDay(String day) {
        this.day = day;
    }

    public String getHour() {
        return hour;
    }

    public void setHour(String hour) {
        this.hour = hour;
    }

    public String getStages() {
        return stages;
    }

    public void setStages(String stages) {
        this.stages = stages;
    }

    public String getAgreed() {
        return agreed;
    }

    public void setAgreed(String agreed) {
        this.agreed = agreed;
    }

    public List<String> getReceivers() {
        return receivers;
    }

    public void setReceivers(List<String> receivers) {
        this.receivers = receivers;
    }

    public String getVersion() {
        return version;
    }

    public void setVersion(String version) {
        this.version = version;
    }

    public String getConfirmed() {
        return confirmed;
    }

    public void setConfirmed(String confirmed) {
        this.confirmed = confirmed;
    }

    public EnteredField getHumidity() {
        return humidity;
    }

    public void setHumidity(EnteredField humidity) {
        this.humidity = humidity;
    }

    public List<SampleRun> getRuns() {
        return runs;
    }

    public void setRuns(List<SampleRun> runs) {
        this.runs = runs;
    }
}
