package plantair.demand.web;

import plantair.quantity.FlowRate;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.Rounded;
import plantair.web.UnitSet;

/**
 * The text of flows in a person's unit, the unit itself standing beside them.
 *
 * @param units of the person
 */
record Flows(UnitSet units) {

    private static final int DRAWN_DIGITS = 6;
    private static final int DIGITS = 3;

    String unit() {
        return units.flow().symbol();
    }

    /** No sharper than its uncertainty. */
    String number(FlowRate flow, FlowRate u) {
        double uncertainty = u.in(units.flow());
        return uncertainty > 0
                ? Rounded.toUncertainty(flow.in(units.flow()), uncertainty)
                : Rounded.significant(flow.in(units.flow()), DIGITS);
    }

    /** With its uncertainty: 141.0 ± 3.5. */
    String both(FlowRate flow, FlowRate u) {
        double uncertainty = u.in(units.flow());
        return uncertainty > 0
                ? number(flow, u) + " ± " + Rounded.toUncertainty(uncertainty, uncertainty)
                : number(flow, u);
    }

    String both(MeasuredFlow flow) {
        return both(flow.flow(), flow.standardUncertainty());
    }

    /** With its uncertainty and unit. */
    String whole(MeasuredFlow flow) {
        return both(flow) + " " + unit();
    }

    /** Of a part of a flow whose uncertainty is told elsewhere. */
    String about(FlowRate flow) {
        return Rounded.significant(flow.in(units.flow()), DIGITS);
    }

    /** For drawing, and for a program that reads the page. */
    String drawn(FlowRate flow) {
        return Rounded.significant(flow.in(units.flow()), DRAWN_DIGITS);
    }
}
