package plantair.guided.web;

import org.jspecify.annotations.Nullable;
import plantair.guided.MachineFigures;
import plantair.quantity.FixedUnit;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** Form bean of the quarterly readings of a machine, everything as text. */
public final class FiguresForm {

    private EnteredField hours = new EnteredField();
    private EnteredField loadedHours = new EnteredField();
    private EnteredField current1 = new EnteredField();
    private EnteredField current2 = new EnteredField();
    private EnteredField current3 = new EnteredField();
    private EnteredField interstagePressure = new EnteredField();
    private EnteredField dischargeTemperature = new EnteredField();
    private EnteredField filterDrop = new EnteredField();
    private EnteredField separatorDrop = new EnteredField();
    private EnteredField speed = new EnteredField();
    private String oilLevel = "";
    private String belt = "";
    private String noise = "";

    static FiguresForm blank(UnitSet units) {
        var form = new FiguresForm();
        form.hours = EnteredField.blank(FixedUnit.HOUR);
        form.loadedHours = EnteredField.blank(FixedUnit.HOUR);
        form.current1 = EnteredField.blank(FixedUnit.AMPERE);
        form.current2 = EnteredField.blank(FixedUnit.AMPERE);
        form.current3 = EnteredField.blank(FixedUnit.AMPERE);
        form.interstagePressure = EnteredField.blank(units.pressure());
        form.dischargeTemperature = EnteredField.blank(units.temperature());
        form.filterDrop = EnteredField.blank(units.pressure());
        form.separatorDrop = EnteredField.blank(units.pressure());
        form.speed = EnteredField.blank(FixedUnit.RPM);
        return form;
    }

    static FiguresForm of(MachineFigures figures, UnitSet units) {
        var form = new FiguresForm();
        form.hours = EnteredField.of(figures.hours(), FixedUnit.HOUR);
        form.loadedHours = EnteredField.of(figures.loadedHours(), FixedUnit.HOUR);
        form.current1 = EnteredField.of(figures.current1(), FixedUnit.AMPERE);
        form.current2 = EnteredField.of(figures.current2(), FixedUnit.AMPERE);
        form.current3 = EnteredField.of(figures.current3(), FixedUnit.AMPERE);
        form.interstagePressure = EnteredField.of(figures.interstagePressure(), units.pressure());
        form.dischargeTemperature = EnteredField.of(figures.dischargeTemperature(), units.temperature());
        form.filterDrop = EnteredField.of(figures.filterDrop(), units.pressure());
        form.separatorDrop = EnteredField.of(figures.separatorDrop(), units.pressure());
        form.speed = EnteredField.of(figures.speed(), FixedUnit.RPM);
        form.oilLevel = figures.oilLevel() == null ? "" : figures.oilLevel().name();
        form.belt = figures.belt() == null ? "" : figures.belt().name();
        form.noise = figures.noise();
        return form;
    }

    public EnteredField getHours() {
        return hours;
    }

    public EnteredField getLoadedHours() {
        return loadedHours;
    }

    public EnteredField getCurrent1() {
        return current1;
    }

    public EnteredField getCurrent2() {
        return current2;
    }

    public EnteredField getCurrent3() {
        return current3;
    }

    public EnteredField getInterstagePressure() {
        return interstagePressure;
    }

    public EnteredField getDischargeTemperature() {
        return dischargeTemperature;
    }

    public EnteredField getFilterDrop() {
        return filterDrop;
    }

    public EnteredField getSeparatorDrop() {
        return separatorDrop;
    }

    public EnteredField getSpeed() {
        return speed;
    }

    public String getOilLevel() {
        return oilLevel;
    }

    public void setOilLevel(@Nullable String oilLevel) {
        this.oilLevel = oilLevel == null ? "" : oilLevel;
    }

    public String getBelt() {
        return belt;
    }

    public void setBelt(@Nullable String belt) {
        this.belt = belt == null ? "" : belt;
    }

    public String getNoise() {
        return noise;
    }

    public void setNoise(@Nullable String noise) {
        this.noise = noise == null ? "" : noise;
    }
}
