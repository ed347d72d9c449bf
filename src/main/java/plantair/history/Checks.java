package plantair.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import plantair.equipment.CompressorKind;
import plantair.equipment.CompressorPlate;
import plantair.equipment.Control;
import plantair.equipment.Drive;
import plantair.history.Check.Item;
import plantair.history.Check.Reason;
import plantair.pumpup.Finding;
import plantair.pumpup.FindingCode;
import plantair.pumpup.PumpUpResult;
import plantair.testrecord.PumpUpTest;

/**
 * What to look at when output is down, the cheapest first; what the test itself rules out is left out. The order is common
 * practice.
 */
final class Checks {

    private final CompressorPlate plate;
    private final Observed observed;
    private final List<Check> list = new ArrayList<>();

    /**
     * What a test says of the causes.
     *
     * @param findings of its result
     * @param gauge state of its gauge
     * @param waterLeft whether water was left in the receiver
     * @param speedRead whether the speed was read, so that the figure allows for a slipping belt
     */
    record Observed(Set<FindingCode> findings, GaugeState gauge, boolean waterLeft, boolean speedRead) {

        static Observed of(PumpUpTest test, PumpUpResult result) {
            return new Observed(
                    result.findings().stream().map(Finding::code).collect(Collectors.toSet()),
                    GaugeState.of(test),
                    test.conditions().water() != null,
                    test.conditions().speed() != null && test.conditions().ratedSpeed() != null);
        }
    }

    private Checks(CompressorPlate plate, Observed observed) {
        this.plate = plate;
        this.observed = observed;
    }

    /** The list for a machine after a test. */
    static List<Check> of(CompressorPlate plate, Observed observed) {
        var checks = new Checks(plate, observed);
        checks.testItself();
        checks.outside();
        checks.inside();
        return List.copyOf(checks.list);
    }

    private void testItself() {
        add(Item.DRAIN, observed.waterLeft() ? Reason.WATER_LEFT : Reason.NOT_RECORDED);
        switch (observed.gauge()) {
            case PAST_ITS_DATE -> add(Item.GAUGE, Reason.GAUGE_PAST_ITS_DATE);
            case NOT_NAMED -> add(Item.GAUGE, Reason.GAUGE_NOT_NAMED);
            case NAMED -> {}
        }
        isolation().ifPresent(reason -> add(Item.ISOLATION, reason));
    }

    private Optional<Reason> isolation() {
        if (found(FindingCode.HOLD_ROSE)) {
            return Optional.of(Reason.HOLD_ROSE);
        }
        if (found(FindingCode.LEAK_ADDED)) {
            return Optional.of(Reason.HOLD_FELL);
        }
        if (found(FindingCode.CHECK_VALVE_LEAKS)) {
            return Optional.of(Reason.CHECK_VALVE_LEAKS);
        }
        if (found(FindingCode.OTHER_MACHINE_ON)) {
            return Optional.of(Reason.OTHER_MACHINE_ON);
        }
        return found(FindingCode.HOLD_MISSING) ? Optional.of(Reason.HOLD_MISSING) : Optional.empty();
    }

    private void outside() {
        add(Item.FILTER, Reason.NOT_RECORDED);
        boolean mayHaveBelt = plate.drive() == Drive.BELT || plate.drive() == Drive.UNKNOWN;
        if (found(FindingCode.SPEED_FREE)) {
            add(Item.SPEED, Reason.SPEED_FREE);
        } else if (!observed.speedRead() && mayHaveBelt) {
            add(Item.BELT, Reason.NOT_RECORDED);
        } else if (!observed.speedRead() && plate.control() == Control.VARIABLE_SPEED) {
            add(Item.SPEED, Reason.NOT_RECORDED);
        }
        switch (plate.kind()) {
            case PISTON -> add(Item.UNLOADER, Reason.NOT_RECORDED);
            case SCREW, VANE -> add(Item.INLET_VALVE, Reason.NOT_RECORDED);
            case SCROLL, OTHER -> {}
        }
    }

    private void inside() {
        switch (plate.kind()) {
            case PISTON -> {
                if (plate.stages() > 1) {
                    add(Item.INTERSTAGE, Reason.NOT_RECORDED);
                }
                add(Item.VALVES, Reason.NOT_RECORDED);
                add(Item.RINGS, Reason.LAST);
            }
            case SCREW, VANE -> {
                add(Item.MINIMUM_PRESSURE_VALVE, Reason.NOT_RECORDED);
                add(Item.SEPARATOR, Reason.NOT_RECORDED);
                add(plate.kind() == CompressorKind.SCREW ? Item.AIREND : Item.BLADES, Reason.LAST);
            }
            case SCROLL -> add(Item.SCROLLS, Reason.LAST);
            case OTHER -> add(Item.INSIDE, Reason.LAST);
        }
    }

    private boolean found(FindingCode code) {
        return observed.findings().contains(code);
    }

    private void add(Item item, Reason reason) {
        list.add(new Check(item, reason));
    }
}
