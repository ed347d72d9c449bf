package plantair.guided.web;

import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.testrecord.VolumeCopy;
import plantair.testrecord.web.TestForm;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** Form bean of a guided test: a test, and what is ticked, timed and read around it; everything as text. */
public final class GuidedForm extends TestForm {

    /** Runs that a page offers; more than three are folded away. */
    static final int RUNS = 6;

    private String tagRead = "";
    private String afterStop = "";
    private String steps = "";
    private String deviceRecordedAt = "";
    private String deviceOffsetMs = "";
    private String draftVersion = "";
    private String device = "";
    private String writer = "";
    private List<String> prepared = new ArrayList<>();
    private List<String> isolated = new ArrayList<>();
    private List<String> putBack = new ArrayList<>();
    private EnteredField drained = new EnteredField();
    private FiguresForm figures = new FiguresForm();

    static GuidedForm blank(UnitSet units, ZoneId zone, Clock clock, String person, List<VolumeCopy> lastVolumes) {
        var form = new GuidedForm();
        form.begin(units, zone, clock, person, lastVolumes);
        form.complete(units);
        form.drained = EnteredField.blank(units.vessel());
        form.figures = FiguresForm.blank(units);
        return form;
    }

    /** Adds the runs that a page offers beside those that were sent. */
    void complete(UnitSet units) {
        while (getRuns().size() < RUNS) {
            addRun(units);
        }
    }

    public String getTagRead() {
        return tagRead;
    }

    public void setTagRead(@Nullable String tagRead) {
        this.tagRead = tagRead == null ? "" : tagRead;
    }

    public String getAfterStop() {
        return afterStop;
    }

    public void setAfterStop(@Nullable String afterStop) {
        this.afterStop = afterStop == null ? "" : afterStop;
    }

    public String getSteps() {
        return steps;
    }

    public void setSteps(@Nullable String steps) {
        this.steps = steps == null ? "" : steps;
    }

    public String getDeviceRecordedAt() {
        return deviceRecordedAt;
    }

    public void setDeviceRecordedAt(@Nullable String deviceRecordedAt) {
        this.deviceRecordedAt = deviceRecordedAt == null ? "" : deviceRecordedAt;
    }

    public String getDeviceOffsetMs() {
        return deviceOffsetMs;
    }

    public void setDeviceOffsetMs(@Nullable String deviceOffsetMs) {
        this.deviceOffsetMs = deviceOffsetMs == null ? "" : deviceOffsetMs;
    }

    public String getDraftVersion() {
        return draftVersion;
    }

    public void setDraftVersion(@Nullable String draftVersion) {
        this.draftVersion = draftVersion == null ? "" : draftVersion;
    }

    public String getWriter() {
        return writer;
    }

    public void setWriter(@Nullable String writer) {
        this.writer = writer == null ? "" : writer;
    }

    public String getDevice() {
        return device;
    }

    public void setDevice(@Nullable String device) {
        this.device = device == null ? "" : device;
    }

    public List<String> getPrepared() {
        return prepared;
    }

    public void setPrepared(@Nullable List<String> prepared) {
        this.prepared = prepared == null ? new ArrayList<>() : prepared;
    }

    public List<String> getIsolated() {
        return isolated;
    }

    public void setIsolated(@Nullable List<String> isolated) {
        this.isolated = isolated == null ? new ArrayList<>() : isolated;
    }

    public List<String> getPutBack() {
        return putBack;
    }

    public void setPutBack(@Nullable List<String> putBack) {
        this.putBack = putBack == null ? new ArrayList<>() : putBack;
    }

    public EnteredField getDrained() {
        return drained;
    }

    public FiguresForm getFigures() {
        return figures;
    }
}
