package plantair.cost.web;

import org.jspecify.annotations.Nullable;
import plantair.cost.CostedMachine;
import plantair.cost.PowerText;
import plantair.quantity.PowerUnit;
import plantair.quantity.Rounded;
import plantair.quantity.SpecificPowerUnit;
import plantair.supply.AirPrice;
import plantair.supply.YearlyCost;
import plantair.testrecord.MeasuredPower;
import plantair.web.QuantityFormat;

/**
 * What a machine takes for its air, by its newest test that read its power.
 *
 * @param id of the machine
 * @param tag how the plant calls it
 * @param testId the test
 * @param on day of the test
 * @param pressure that it belongs to
 * @param flow free air with its uncertainty
 * @param power electric
 * @param perHundredCfm specific power
 * @param perCubicMetre specific power
 * @param yearOfHundredCfm energy or money for 100 cfm a year
 * @param yearOfCubicMetre the same for 1 m³/min
 */
record MachineRow(
        long id,
        String tag,
        long testId,
        String on,
        String pressure,
        String flow,
        String power,
        String perHundredCfm,
        String perCubicMetre,
        String yearOfHundredCfm,
        String yearOfCubicMetre) {

    static @Nullable MachineRow of(CostedMachine machine, CostQuestion question, QuantityFormat format) {
        return machine.power()
                .map(measured -> of(machine, measured, question, format))
                .orElse(null);
    }

    private static MachineRow of(
            CostedMachine machine, MeasuredPower measured, CostQuestion question, QuantityFormat format) {
        var specific = measured.specificPower();
        double u = measured.relativeU();
        var price = new AirPrice(specific, u, question.hours(), question.tariff());
        var output = measured.output();
        return new MachineRow(
                machine.compressor().id(),
                machine.tag(),
                output.testId(),
                output.on().toString(),
                format.gauge(output.at()),
                u > 0 ? format.flow(output.flow(), u) : format.flow(output.flow()),
                Rounded.places(measured.input().in(PowerUnit.KW), 1) + " " + PowerUnit.KW.symbol(),
                PowerText.number(specific, u, SpecificPowerUnit.KW_PER_100_CFM),
                PowerText.number(specific, u, SpecificPowerUnit.KW_PER_CUBIC_METRE_PER_MINUTE),
                year(price.perHundredCfm()),
                year(price.perCubicMetrePerMinute()));
    }

    private static String year(YearlyCost cost) {
        double amount = cost.money() == null ? cost.kilowattHours() : cost.money();
        return QuantityFormat.amount(amount, amount * cost.relativeU());
    }
}
