package plantair.demand.web;

import java.util.Optional;
import plantair.demand.DemandKind;
import plantair.demand.NozzleEdge;
import plantair.demand.StatedAt;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Entered;
import plantair.quantity.FlowBasis;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.supply.BlastNozzle;
import plantair.supply.ItemAir;
import plantair.web.EnteredField;

/**
 * Reads the air of one item.
 *
 * @param typing reads the single fields
 * @param station barometric pressure of the site
 */
record AirReader(Typing typing, AbsolutePressure station) {

    private static final String PATH = "air.";
    private static final String PRESSURE = "air.pressure";

    Optional<Air> read(DemandKind kind, AirForm form) {
        return switch (kind) {
            case BLAST_NOZZLE -> blastNozzle(form);
            case OPEN_NOZZLE -> openNozzle(form);
            case TOOL, EVENT, OTHER -> plate(form);
        };
    }

    private Optional<Air> plate(AirForm form) {
        blank("bore", form.getBore());
        noNozzle(form);
        var flow = typing.flow(PATH + "flow", form.getFlow(), true);
        var basis = typing.sent().checks().choice(PATH + "basis", form.getBasis(), FlowBasis.class);
        var stated = typing.sent().checks().choice(PATH + "stated", form.getStated(), StatedAt.class);
        boolean seaLevel = stated.isPresent() && stated.get() == StatedAt.SEA_LEVEL;
        var pressure = typing.pressure(PRESSURE, form.getPressure(), false);
        if (seaLevel && form.getPressure().isBlank()) {
            typing.sent().reject(PRESSURE + ".number", "demand.pressure.seaLevel");
            return Optional.empty();
        }
        if (basis.isPresent() && basis.get() == FlowBasis.DISPLACEMENT) {
            typing.sent().reject(PATH + "basis", "demand.basis.displacement");
            return Optional.empty();
        }
        return flow.isEmpty() || basis.isEmpty() || stated.isEmpty()
                ? Optional.empty()
                : Optional.of(new Air(flow.get(), basis.get(), stated.get(), null, null, null, pressure.orElse(null)));
    }

    private Optional<Air> blastNozzle(AirForm form) {
        blank("flow", form.getFlow());
        blank("bore", form.getBore());
        var nozzle = typing.sent().checks().choice(PATH + "nozzle", form.getNozzle(), BlastNozzle.class);
        var pressure = typing.pressure(PRESSURE, form.getPressure(), true);
        if (nozzle.isEmpty() || pressure.isEmpty()) {
            return Optional.empty();
        }
        if (nozzle.get().flow(GaugePressure.of(pressure.get())).isEmpty()) {
            typing.sent()
                    .reject(
                            PRESSURE + ".number",
                            "demand.pressure.blast",
                            pressure.get().toString());
            return Optional.empty();
        }
        return Optional.of(new Air(null, null, null, nozzle.get(), null, null, pressure.get()));
    }

    private Optional<Air> openNozzle(AirForm form) {
        blank("flow", form.getFlow());
        noNozzle(form);
        Optional<Entered> bore = typing.bore(PATH + "bore", form.getBore());
        var edge = typing.sent().checks().choice(PATH + "edge", form.getEdge(), NozzleEdge.class);
        var pressure = typing.pressure(PRESSURE, form.getPressure(), true);
        if (bore.isEmpty() || edge.isEmpty() || pressure.isEmpty()) {
            return Optional.empty();
        }
        var air = ItemAir.throughHole(
                Length.of(bore.get()), edge.get().coefficient(), GaugePressure.of(pressure.get()), station);
        if (air.isEmpty()) {
            typing.sent()
                    .reject(
                            PRESSURE + ".number",
                            "demand.pressure.notChoked",
                            pressure.get().toString());
            return Optional.empty();
        }
        return Optional.of(new Air(null, null, null, null, bore.get(), edge.get(), pressure.get()));
    }

    /** What belongs to another kind must not be typed: it would be dropped unseen. */
    private void blank(String field, EnteredField typed) {
        if (!typed.isBlank()) {
            typing.sent().reject(PATH + field + ".number", "demand.ofAnotherKind");
        }
    }

    private void noNozzle(AirForm form) {
        if (!form.getNozzle().isBlank()) {
            typing.sent().reject(PATH + "nozzle", "demand.ofAnotherKind");
        }
    }
}
