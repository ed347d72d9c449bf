package plantair.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plantair.quantity.FlowUnit.CFM;
import static plantair.quantity.PressureUnit.PSI;

import java.util.List;
import org.junit.jupiter.api.Test;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.MeasuredFlow;
import plantair.supply.Margin.Verdict;

/** Supply against demand; the blast room is an invented plant whose figures were worked by hand. */
class SupplyAndDemandTests {

    private static final GaugePressure PSIG_100 = GaugePressure.of(100, PSI);

    private static MeasuredFlow cfm(double flow, double relativeU) {
        return MeasuredFlow.of(FlowRate.of(flow, CFM), relativeU, FlowBasis.INTAKE);
    }

    private static CapacityPart machine(String label, double flow, double random, SharedPart... shared) {
        return new CapacityPart(label, FlowRate.of(flow, CFM), random, List.of(shared));
    }

    private static Capacity twoMachines(double u) {
        return new Capacity(List.of(machine("A", 91, u), machine("B", 62, u)), FlowBasis.INTAKE);
    }

    private static SupplyAndDemand blastRoom(BlastNozzle nozzle, double u) {
        double use = nozzle.flow(PSIG_100).orElseThrow().in(CFM);
        var item = new DemandItem("blast room", 1, cfm(use, 0), 1, BlastNozzle.RESERVE);
        return new SupplyAndDemand(twoMachines(u), cfm(12, 0.1), List.of(item));
    }

    /** 5/16 in takes 137; 91 + 62 − 12 = 141: margin 3 %, and with the reserve of one half 206 are needed. */
    @Test
    void saysThatTheWideNozzleNeedsMore() {
        SupplyAndDemand room = blastRoom(BlastNozzle.NO_5, 0.03);

        Margin bare = room.withoutReserve();
        Margin whole = room.withReserve();

        assertThat(bare.supply().in(CFM)).isCloseTo(141, within(1e-9));
        assertThat(bare.need().in(CFM)).isCloseTo(137, within(1e-9));
        assertThat(bare.part()).isCloseTo(0.03, within(5e-3));
        assertThat(whole.need().in(CFM)).isCloseTo(206, within(0.51));
        assertThat(whole.verdict()).isEqualTo(Verdict.NOT_ENOUGH);
    }

    /** 4 cfm of margin with 3 % in each machine: u = √(2.73² + 1.86² + 1.2²) = 3.515 cfm, probability 0.872. */
    @Test
    void doesNotSayMoreOfTheBareMarginThanItsUncertaintyLets() {
        Margin unsure = blastRoom(BlastNozzle.NO_5, 0.03).withoutReserve();
        Margin sure = blastRoom(BlastNozzle.NO_5, 0.01).withoutReserve();

        assertThat(unsure.u().in(CFM)).isCloseTo(3.515, within(5e-4));
        assertThat(unsure.probability()).isCloseTo(0.872, within(5e-4));
        assertThat(unsure.verdict()).isEqualTo(Verdict.CANNOT_BE_TOLD);
        assertThat(sure.verdict()).isEqualTo(Verdict.ENOUGH);
        assertThat(unsure.settledBy().in(CFM)).isCloseTo(4 / 1.645, within(1e-3));
    }

    /** 1/4 in: 81 · 1.5 = 121.5, and 141 is enough; worn to 5/16 in it is not. */
    @Test
    void saysThatTheNarrowNozzleHasEnoughUntilItWears() {
        SupplyAndDemand room = blastRoom(BlastNozzle.NO_4, 0.03);

        assertThat(room.withReserve().need().in(CFM)).isCloseTo(121.5, within(1e-9));
        assertThat(room.withReserve().verdict()).isEqualTo(Verdict.ENOUGH);
        assertThat(blastRoom(BlastNozzle.NO_4.worn().orElseThrow(), 0.03)
                        .withReserve()
                        .verdict())
                .isEqualTo(Verdict.NOT_ENOUGH);
    }

    /** Without A 62 − 12 = 50 are left: nobody blasts. */
    @Test
    void saysWhatIsLeftWithoutTheLargestMachine() {
        Margin left = blastRoom(BlastNozzle.NO_4, 0.03).withoutLargest();

        assertThat(left.supply().in(CFM)).isCloseTo(50, within(1e-9));
        assertThat(left.verdict()).isEqualTo(Verdict.NOT_ENOUGH);
        assertThat(blastRoom(BlastNozzle.NO_4, 0.03).stoppedByLoss())
                .extracting(DemandItem::label)
                .containsExactly("blast room");
        assertThat(blastRoom(BlastNozzle.NO_2, 0.03).stoppedByLoss()).isEmpty();
    }

    /** 137 of 141 is 97 %; nothing is left of 12 cfm when both machines of a site stand. */
    @Test
    void tellsHowMuchOfTheSupplyIsTaken() {
        assertThat(blastRoom(BlastNozzle.NO_5, 0.03).withoutReserve().load().orElseThrow())
                .isCloseTo(0.972, within(5e-4));
        var dry = new SupplyAndDemand(
                new Capacity(List.of(), FlowBasis.INTAKE),
                cfm(12, 0.1),
                List.of(new DemandItem("tool", 1, cfm(1, 0), 1, 0)));
        assertThat(dry.withoutReserve().load()).isEmpty();
    }

    /** Machines of 3 % together 3.3 cfm, leaks 1.2; a nozzle known to 5 % needs 206 ± 10, one known exactly nothing. */
    @Test
    void namesWhatTheMarginIsLeastSureBy() {
        assertThat(blastRoom(BlastNozzle.NO_5, 0.03).leastSure()).isEqualTo(SupplyAndDemand.Source.CAPACITY);
        assertThat(blastRoom(BlastNozzle.NO_5, 0).leastSure()).isEqualTo(SupplyAndDemand.Source.LEAKS);
        var item = new DemandItem("blast room", 1, cfm(137, 0.05), 1, BlastNozzle.RESERVE);
        assertThat(new SupplyAndDemand(twoMachines(0.03), cfm(12, 0.1), List.of(item)).leastSure())
                .isEqualTo(SupplyAndDemand.Source.DEMAND);
    }

    @Test
    void namesTheLargestMachine() {
        assertThat(twoMachines(0).largest().orElseThrow().label()).isEqualTo("A");
        assertThat(new Capacity(List.of(machine("X", 5, 0), machine("Y", 5, 0)), FlowBasis.INTAKE)
                        .largest()
                        .orElseThrow()
                        .label())
                .isEqualTo("X");
        assertThat(new Capacity(List.of(), FlowBasis.INTAKE).largest()).isEmpty();
    }

    /** By hand: alone √((100 · 0.03)² + (100 · 0.03)²) = 4.243; by one gauge 200 · 0.04 = 8; together 9.055. */
    @Test
    void addsSharedErrorsBeforeTheyAreSquared() {
        var gauge = new SharedPart("gauge G-1", 0.04);
        var other = new SharedPart("gauge G-2", 0.04);

        MeasuredFlow one = new Capacity(
                        List.of(machine("A", 100, 0.03, gauge), machine("B", 100, 0.03, gauge)), FlowBasis.INTAKE)
                .total();
        MeasuredFlow two = new Capacity(
                        List.of(machine("A", 100, 0.03, gauge), machine("B", 100, 0.03, other)), FlowBasis.INTAKE)
                .total();

        assertThat(one.flow().in(CFM)).isCloseTo(200, within(1e-9));
        assertThat(one.standardUncertainty().in(CFM)).isCloseTo(9.055, within(5e-4));
        assertThat(two.standardUncertainty().in(CFM)).isCloseTo(Math.sqrt(18 + 32), within(1e-6));
    }

    @Test
    void takesOneOfEqualMachinesAway() {
        var equal = new Capacity(List.of(machine("A", 50, 0), machine("A", 50, 0)), FlowBasis.INTAKE);

        assertThat(equal.withoutLargest().total().flow().in(CFM)).isCloseTo(50, within(1e-9));
        assertThat(equal.withoutLargest().withoutLargest().total().flow().in(CFM))
                .isZero();
        assertThat(new Capacity(List.of(), FlowBasis.INTAKE).withoutLargest().parts())
                .isEmpty();
    }

    /** 4 tools of 10 cfm a third of the time, a fifth in reserve; each known to 10 %: 13.33, 16 and 40 cfm. */
    @Test
    void countsToolsWithTheirUseFactor() {
        var tools = new DemandItem("grinders", 4, cfm(10, 0.1), 1 / 3.0, 0.2);
        var site = new SupplyAndDemand(twoMachines(0), cfm(0, 0), List.of(tools));

        assertThat(tools.use().in(CFM)).isCloseTo(40 / 3.0, within(1e-9));
        assertThat(tools.need().in(CFM)).isCloseTo(16, within(1e-9));
        assertThat(tools.peak().in(CFM)).isCloseTo(40, within(1e-9));
        assertThat(site.atPeak().need().in(CFM)).isCloseTo(40, within(1e-9));
        assertThat(site.atPeak().u().in(CFM)).isCloseTo(4, within(1e-9));
        assertThat(site.net().flow().in(CFM)).isCloseTo(153, within(1e-9));
        assertThat(site.need().standardUncertainty().in(CFM)).isCloseTo(1.6, within(1e-9));
        assertThat(site.withReserve().u().in(CFM)).isCloseTo(1.6, within(1e-9));
        assertThat(site.withoutReserve().u().in(CFM)).isCloseTo(4 / 3.0, within(1e-9));
    }

    @Test
    void decidesWithoutUncertaintyByTheSign() {
        var exact = new DemandItem("all", 1, cfm(153, 0), 1, 0);
        var more = new DemandItem("all", 1, cfm(153.1, 0), 1, 0);

        assertThat(new SupplyAndDemand(twoMachines(0), cfm(0, 0), List.of(more))
                        .withReserve()
                        .verdict())
                .isEqualTo(Verdict.NOT_ENOUGH);
        assertThat(new SupplyAndDemand(twoMachines(0), cfm(1, 0), List.of(exact))
                        .withReserve()
                        .verdict())
                .isEqualTo(Verdict.NOT_ENOUGH);
    }

    @Test
    void refusesFlowsOfDifferentBases() {
        var dry = MeasuredFlow.of(FlowRate.of(12, CFM), 0, FlowBasis.STANDARD_14_5PSIA_68F_DRY);
        var item = new DemandItem("tool", 1, cfm(10, 0), 1, 0);
        var dryItem = new DemandItem("tool", 1, dry, 1, 0);

        assertThatThrownBy(() -> new SupplyAndDemand(twoMachines(0), dry, List.of(item)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SupplyAndDemand(twoMachines(0), cfm(12, 0), List.of(item, dryItem)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new SupplyAndDemand(twoMachines(0), cfm(12, 0), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DemandItem("tool", 0, cfm(1, 0), 1, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DemandItem("tool", 1, cfm(1, 0), 1.1, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DemandItem("tool", 1, cfm(1, 0), 1, -0.1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> machine("A", -1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> machine("A", 1, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SharedPart("gauge", Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
