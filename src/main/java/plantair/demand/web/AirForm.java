package plantair.demand.web;

import plantair.demand.DemandFacts;
import plantair.demand.NozzleEdge;
import plantair.demand.StatedAt;
import plantair.quantity.FlowBasis;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about the air of one item. */
final class AirForm {

    private EnteredField flow = new EnteredField();
    private String basis = "";
    private String stated = "";
    private String nozzle = "";
    private EnteredField bore = new EnteredField();
    private String edge = "";
    private EnteredField pressure = new EnteredField();

    static AirForm blank(UnitSet units) {
        var form = new AirForm();
        form.flow = EnteredField.blank(units.flow());
        form.basis = FlowBasis.UNKNOWN.name();
        form.stated = StatedAt.SEA_LEVEL.name();
        form.bore = EnteredField.blank(units.bore());
        form.edge = NozzleEdge.SHARP.name();
        form.pressure = EnteredField.blank(units.pressure());
        return form;
    }

    static AirForm from(DemandFacts facts, UnitSet units) {
        var form = blank(units);
        form.flow = EnteredField.of(facts.flow(), units.flow());
        form.basis = facts.basis() == null ? form.basis : facts.basis().name();
        form.stated = facts.stated() == null ? form.stated : facts.stated().name();
        form.nozzle = facts.nozzle() == null ? "" : facts.nozzle().name();
        form.bore = EnteredField.of(facts.bore(), units.bore());
        form.edge = facts.edge() == null ? form.edge : facts.edge().name();
        form.pressure = EnteredField.of(facts.pressure(), units.pressure());
        return form;
    }

    public EnteredField getFlow() {
        return flow;
    }

    public String getBasis() {
        return basis;
    }

    public void setBasis(String basis) {
        this.basis = basis;
    }

    public String getStated() {
        return stated;
    }

    public void setStated(String stated) {
        this.stated = stated;
    }

    public String getNozzle() {
        return nozzle;
    }

    public void setNozzle(String nozzle) {
        this.nozzle = nozzle;
    }

    public EnteredField getBore() {
        return bore;
    }

    public String getEdge() {
        return edge;
    }

    public void setEdge(String edge) {
        this.edge = edge;
    }

    public EnteredField getPressure() {
        return pressure;
    }
}
