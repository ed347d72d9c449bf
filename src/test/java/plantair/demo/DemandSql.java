package plantair.demo;

import org.jspecify.annotations.Nullable;
import plantair.demand.DemandKind;
import plantair.demand.LeaksFrom;
import plantair.demand.NozzleEdge;
import plantair.demand.StatedAt;
import plantair.quantity.FlowBasis;
import plantair.supply.BlastNozzle;

/** What takes air at the sites of the demo plant, and how they reckon their supply. All of it is invented. */
final class DemandSql {

    private static final String CFM = " [cft_i]/min";

    private final Script script;

    DemandSql(Script script) {
        this.script = script;
    }

    void add() {
        choice(Registers.GULL, "110 [psi]", "25 %", "Header of the compressor house. C-03 is kept for the harvest.");
        choice(Registers.MESA, "7.0 bar", "20 %", "");
        script.add(new Insert("supply_standby")
                .setSql(
                        "choice_id",
                        "(select id from supply_choice where site_id = " + Script.id("site", Registers.GULL) + ")")
                .setSql("compressor_id", Script.id("compressor", "C-03"))
                .set("tag", "C-03"));
        gull();
        mesa();
    }

    private void gull() {
        String site = Registers.GULL;
        plate(site, "Can fillers, lines 1 and 2", DemandKind.TOOL, 12, "6.5", "80 [psi]", "60 %", "75 [psi]");
        plate(site, "Labelers", DemandKind.TOOL, 4, "2.2", "80 [psi]", "60 %", null);
        plate(site, "Case packers", DemandKind.TOOL, 2, "14", "85 [psi]", "50 %", "80 [psi]");
        plate(site, "Impact wrenches, workshop", DemandKind.TOOL, 3, "6", "90 [psi]", "15 %", "90 [psi]");
        script.add(item(site, "Retort door seals", DemandKind.OTHER, 2)
                .set("flow", "1.6" + CFM)
                .set("basis", FlowBasis.INTAKE)
                .set("stated", StatedAt.HERE)
                .set("uncertainty", "5 %")
                .set("note", "Bag test of March 2026."));
        script.add(item(site, "Blow-off over belt 3", DemandKind.OPEN_NOZZLE, 6)
                .set("bore", "0.09 [in_i]")
                .set("edge", NozzleEdge.SHARP)
                .set("pressure", "60 [psi]")
                .set("use_factor", "70 %")
                .set("note", "Drilled pipe. Flat nozzles would do with a third of it."));
        script.add(item(site, "Blast cabinet, trolley shop", DemandKind.BLAST_NOZZLE, 1)
                .set("nozzle", BlastNozzle.NO_3)
                .set("pressure", "80 [psi]")
                .set("use_factor", "10 %")
                .set("note", ""));
        event(site, "Filter back-flush", 1, "160", "80 [psi]", "12 s", "15 min", "80 [psi]");
        event(site, "Timed drains", 4, "20", "100 [psi]", "5 s", "10 min", null);
        script.add(item(site, "Air knife, old fruit washer", DemandKind.OTHER, 1, false)
                .set("flow", "60" + CFM)
                .set("basis", FlowBasis.UNKNOWN)
                .set("stated", StatedAt.SEA_LEVEL)
                .set("pressure", "60 [psi]")
                .set("note", "A blower took its place in 2024."));
    }

    private void mesa() {
        String site = Registers.MESA;
        plate(site, "Filling heads", DemandKind.TOOL, 4, "3.2", "75 [psi]", "60 %", "5.5 bar");
        plate(site, "Bag sealers", DemandKind.TOOL, 3, "2.0", "80 [psi]", "50 %", null);
        script.add(item(site, "Blow guns, cleaning", DemandKind.OPEN_NOZZLE, 2)
                .set("bore", "2.0 mm")
                .set("edge", NozzleEdge.ROUNDED)
                .set("pressure", "5 bar")
                .set("use_factor", "10 %")
                .set("note", ""));
        script.add(item(site, "Spot blaster, repairs", DemandKind.BLAST_NOZZLE, 1)
                .set("nozzle", BlastNozzle.NO_2)
                .set("pressure", "60 [psi]")
                .set("use_factor", "5 %")
                .set("note", ""));
        event(site, "Sorter ejectors", 1, "28", "75 [psi]", "2 s", "20 s", null);
        event(site, "Pallet lift", 1, "25", "90 [psi]", "20 s", "6 min", "6 bar");
    }

    private void choice(String site, String pressure, String reserve, String note) {
        script.add(new Insert("supply_choice")
                .setSql("site_id", Script.id("site", site))
                .set("working_pressure", pressure)
                .set("reserve", reserve)
                .set("leaks_from", LeaksFrom.TEST)
                .set("note", note)
                .set("version", 0));
    }

    private void plate(
            String site,
            String label,
            DemandKind kind,
            int pieces,
            String cfm,
            String pressure,
            String share,
            @Nullable String least) {
        script.add(item(site, label, kind, pieces)
                .set("flow", cfm + CFM)
                .set("basis", FlowBasis.UNKNOWN)
                .set("stated", StatedAt.SEA_LEVEL)
                .set("pressure", pressure)
                .set("least_pressure", least)
                .set("use_factor", share)
                .set("note", ""));
    }

    private void event(
            String site,
            String label,
            int pieces,
            String cfm,
            String pressure,
            String length,
            String every,
            @Nullable String least) {
        script.add(item(site, label, DemandKind.EVENT, pieces)
                .set("flow", cfm + CFM)
                .set("basis", FlowBasis.INTAKE)
                .set("stated", StatedAt.SEA_LEVEL)
                .set("pressure", pressure)
                .set("least_pressure", least)
                .set("event_length", length)
                .set("event_every", every)
                .set("note", ""));
    }

    private static Insert item(String site, String label, DemandKind kind, int pieces) {
        return item(site, label, kind, pieces, true);
    }

    private static Insert item(String site, String label, DemandKind kind, int pieces, boolean inService) {
        return new Insert("demand_item")
                .setSql("site_id", Script.id("site", site))
                .set("label", label)
                .set("kind", kind)
                .set("pieces", pieces)
                .set("in_service", inService)
                .set("version", 0);
    }
}
