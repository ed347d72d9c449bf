package plantair.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plantair.equipment.CompressorKind;
import plantair.equipment.CompressorPlate;
import plantair.equipment.Control;
import plantair.equipment.Drive;
import plantair.history.Check.Item;
import plantair.history.Check.Reason;
import plantair.pumpup.FindingCode;

/** The order and what belongs to which machine: common practice, no source. */
class ChecksTests {

    private static final Checks.Observed NOTHING_ODD = new Checks.Observed(Set.of(), GaugeState.NAMED, false, false);

    private static CompressorPlate plate(CompressorKind kind, int stages, Drive drive, Control control) {
        return new CompressorPlate(
                "C-1", "", "", kind, stages, drive, control, null, null, null, null, null, null, "", true);
    }

    private static List<Item> items(CompressorPlate plate, Checks.Observed observed) {
        return Checks.of(plate, observed).stream().map(Check::item).toList();
    }

    private static Checks.Observed found(FindingCode... codes) {
        return new Checks.Observed(Set.of(codes), GaugeState.NAMED, false, false);
    }

    private static List<Check> piston(Checks.Observed observed) {
        return Checks.of(plate(CompressorKind.PISTON, 2, Drive.BELT, Control.START_STOP), observed);
    }

    @Test
    void goesFromTheDrainToTheRingsOfAPistonMachine() {
        assertThat(items(plate(CompressorKind.PISTON, 2, Drive.BELT, Control.START_STOP), NOTHING_ODD))
                .containsExactly(
                        Item.DRAIN, Item.FILTER, Item.BELT, Item.UNLOADER, Item.INTERSTAGE, Item.VALVES, Item.RINGS);
        assertThat(items(plate(CompressorKind.PISTON, 1, Drive.DIRECT, Control.START_STOP), NOTHING_ODD))
                .containsExactly(Item.DRAIN, Item.FILTER, Item.UNLOADER, Item.VALVES, Item.RINGS);
    }

    @Test
    void asksAScrewMachineForNoPistonValves() {
        assertThat(items(plate(CompressorKind.SCREW, 2, Drive.GEAR, Control.VARIABLE_SPEED), NOTHING_ODD))
                .containsExactly(
                        Item.DRAIN,
                        Item.FILTER,
                        Item.SPEED,
                        Item.INLET_VALVE,
                        Item.MINIMUM_PRESSURE_VALVE,
                        Item.SEPARATOR,
                        Item.AIREND);
    }

    @ParameterizedTest
    @EnumSource(CompressorKind.class)
    void goesFromCheapToDear(CompressorKind kind) {
        var all = new Checks.Observed(EnumSet.allOf(FindingCode.class), GaugeState.NOT_NAMED, true, false);

        assertThat(items(plate(kind, 2, Drive.UNKNOWN, Control.UNKNOWN), all))
                .startsWith(Item.DRAIN, Item.GAUGE, Item.ISOLATION, Item.FILTER)
                .isSorted()
                .doesNotHaveDuplicates();
        assertThat(Checks.of(plate(kind, 2, Drive.UNKNOWN, Control.UNKNOWN), all))
                .filteredOn(check -> check.reason() == Reason.LAST)
                .hasSize(1);
    }

    @Test
    void saysWhyByTheFindingsOfTheTest() {
        assertThat(piston(found(FindingCode.LEAK_ADDED))).contains(new Check(Item.ISOLATION, Reason.HOLD_FELL));
        assertThat(piston(found(FindingCode.HOLD_ROSE))).contains(new Check(Item.ISOLATION, Reason.HOLD_ROSE));
        assertThat(piston(found(FindingCode.HOLD_MISSING))).contains(new Check(Item.ISOLATION, Reason.HOLD_MISSING));
        assertThat(piston(found(FindingCode.CHECK_VALVE_LEAKS)))
                .contains(new Check(Item.ISOLATION, Reason.CHECK_VALVE_LEAKS));
        assertThat(piston(found(FindingCode.OTHER_MACHINE_ON)))
                .contains(new Check(Item.ISOLATION, Reason.OTHER_MACHINE_ON));
        assertThat(piston(found(FindingCode.SPEED_FREE))).contains(new Check(Item.SPEED, Reason.SPEED_FREE));
        assertThat(piston(new Checks.Observed(Set.of(), GaugeState.PAST_ITS_DATE, true, false)))
                .contains(new Check(Item.DRAIN, Reason.WATER_LEFT), new Check(Item.GAUGE, Reason.GAUGE_PAST_ITS_DATE));
    }

    @Test
    void leavesTheBeltOutWhenTheSpeedWasRead() {
        assertThat(piston(new Checks.Observed(Set.of(), GaugeState.NAMED, false, true)))
                .extracting(Check::item)
                .doesNotContain(Item.BELT, Item.SPEED);
    }
}
