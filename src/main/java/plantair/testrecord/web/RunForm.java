package plantair.testrecord.web;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.quantity.DurationUnit;
import plantair.testrecord.RunEntry;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** Form bean of one run, everything as text. */
public final class RunForm {

    private EnteredField startPressure = new EnteredField();
    private EnteredField stopPressure = new EnteredField();
    private EnteredField elapsed = new EnteredField();
    private EnteredField startAir = new EnteredField();
    private EnteredField stopAir = new EnteredField();
    private EnteredField settledPressure = new EnteredField();
    private EnteredField settledAir = new EnteredField();
    private EnteredField settledWait = new EnteredField();
    private String laps = "";

    static RunForm blank(UnitSet units) {
        var form = new RunForm();
        form.startPressure = EnteredField.blank(units.pressure());
        form.stopPressure = EnteredField.blank(units.pressure());
        form.elapsed = EnteredField.blank(DurationUnit.SECOND);
        form.startAir = EnteredField.blank(units.temperature());
        form.stopAir = EnteredField.blank(units.temperature());
        form.settledPressure = EnteredField.blank(units.pressure());
        form.settledAir = EnteredField.blank(units.temperature());
        form.settledWait = EnteredField.blank(DurationUnit.MINUTE);
        return form;
    }

    static RunForm from(RunEntry run, UnitSet units) {
        var form = new RunForm();
        form.startPressure = EnteredField.of(run.startPressure(), units.pressure());
        form.stopPressure = EnteredField.of(run.stopPressure(), units.pressure());
        form.elapsed = EnteredField.of(run.elapsed(), DurationUnit.SECOND);
        form.startAir = EnteredField.of(run.startAir(), units.temperature());
        form.stopAir = EnteredField.of(run.stopAir(), units.temperature());
        form.settledPressure = EnteredField.of(run.settledPressure(), units.pressure());
        form.settledAir = EnteredField.of(run.settledAir(), units.temperature());
        form.settledWait = EnteredField.of(run.settledWait(), DurationUnit.MINUTE);
        form.laps = run.laps() == null ? "" : run.laps().toString();
        return form;
    }

    /** True when it has both pressures and a time. */
    boolean isTimed() {
        return !startPressure.isBlank() && !stopPressure.isBlank() && !elapsed.isBlank();
    }

    /** True when nothing was typed into it. */
    boolean isBlank() {
        return Stream.of(
                                startPressure,
                                stopPressure,
                                elapsed,
                                startAir,
                                stopAir,
                                settledPressure,
                                settledAir,
                                settledWait)
                        .allMatch(EnteredField::isBlank)
                && laps.isBlank();
    }

    public EnteredField getStartPressure() {
        return startPressure;
    }

    public EnteredField getStopPressure() {
        return stopPressure;
    }

    public EnteredField getElapsed() {
        return elapsed;
    }

    public EnteredField getStartAir() {
        return startAir;
    }

    public EnteredField getStopAir() {
        return stopAir;
    }

    public EnteredField getSettledPressure() {
        return settledPressure;
    }

    public EnteredField getSettledAir() {
        return settledAir;
    }

    public EnteredField getSettledWait() {
        return settledWait;
    }

    /** Marks passed on the way, such as {@code 150 psi @ 12.4 s; 160 psi @ 31.0 s}. */
    public String getLaps() {
        return laps;
    }

    public void setLaps(@Nullable String laps) {
        this.laps = laps == null ? "" : laps;
    }
}
