package plantair.demo;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.quantity.FlowBasis;

/**
 * Offers for a machine beside C-02 as SQL: two that look alike on their sheets and differ by their bases, one that names a
 * displacement, and one that was lost. Makers and dealers are invented.
 */
final class OfferSql {

    private static final List<Row> OFFERS = List.of(
            new Row(
                    "Torvane RS-40, dealer at the harbour",
                    "2026-04-20",
                    "162 [cft_i]/min",
                    FlowBasis.STANDARD_14_696PSIA_60F_DRY,
                    "125 [psi]",
                    "32.4 kW",
                    "14.5 [psi]|68 [degF]|0 %",
                    "28400 {money}",
                    "Eight weeks. Dryer not in it.",
                    true),
            new Row(
                    "Halden 30 F, by letter",
                    "2026-04-27",
                    "4.55 m3/min",
                    FlowBasis.INTAKE,
                    "8 bar",
                    "31.0 kW",
                    "100 kPa|20 Cel|0 %",
                    "31200 {money}",
                    "",
                    true),
            new Row(
                    "Used piston machine, Brandt yard",
                    "2026-05-04",
                    "190 [cft_i]/min",
                    FlowBasis.DISPLACEMENT,
                    "125 [psi]",
                    "33 kW",
                    "14.5 [psi]|68 [degF]|0 %",
                    null,
                    "They say 190 cfm; that is bore, stroke and speed. Asked for a pump-up test.",
                    true),
            new Row(
                    "Torvane RS-30, first letter",
                    "2025-11-12",
                    "118 [cft_i]/min",
                    FlowBasis.STANDARD_14_5PSIA_68F_DRY,
                    "125 [psi]",
                    "25.1 kW",
                    "14.5 [psi]|68 [degF]|0 %",
                    "23900 {money}",
                    "Too small by now.",
                    false));

    private OfferSql() {}

    private record Row(
            String label,
            String day,
            String flow,
            FlowBasis basis,
            String pressure,
            String power,
            String intake,
            @Nullable String price,
            String note,
            boolean open) {}

    static void add(Script script) {
        for (Row offer : OFFERS) {
            String[] intake = offer.intake().split("[|]");
            script.add(new Insert("offer")
                    .setSql("site_id", Script.id("site", Registers.GULL))
                    .set("label", offer.label())
                    .set("offered_on", LocalDate.parse(offer.day()))
                    .set("flow", offer.flow())
                    .set("basis", offer.basis())
                    .set("pressure", offer.pressure())
                    .set("power", offer.power())
                    .set("station", intake[0])
                    .set("temperature", intake[1])
                    .set("humidity", intake[2])
                    .set("price", offer.price())
                    .set("note", offer.note())
                    .set("open", offer.open())
                    .set("version", 0));
        }
    }
}
