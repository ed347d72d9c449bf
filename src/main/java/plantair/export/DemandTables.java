package plantair.export;

import static plantair.export.DataColumn.code;
import static plantair.export.DataColumn.id;
import static plantair.export.DataColumn.of;
import static plantair.export.DataColumn.reading;
import static plantair.export.DataColumn.text;

import java.util.List;
import java.util.stream.Stream;
import plantair.demand.DemandKind;
import plantair.demand.LeaksFrom;
import plantair.demand.NozzleEdge;
import plantair.demand.StatedAt;
import plantair.quantity.FlowBasis;
import plantair.supply.BlastNozzle;

/** What takes air at the sites, and how they reckon their supply. */
final class DemandTables {

    private static final DataColumn OF_SITE = id("site_id", "site_id", "its site, in sites.csv");

    private DemandTables() {}

    static Stream<DataFile> all() {
        return Stream.of(items(), choices(), standby());
    }

    private static DataFile items() {
        return DataFile.of(
                "demand_items",
                "demand_item",
                "something that takes air at a site",
                RegisterFiles.BY_ID,
                id("demand_item_id", "id", "number of the item"),
                OF_SITE,
                text("label", "what and where"),
                code("kind", "what takes the air", DemandKind.class),
                of(CellKind.WHOLE, "pieces", "how many of them"),
                reading("flow", "air of one while it runs; empty where a nozzle tells it", Si.FLOW)
                        .orEmpty(),
                code("basis", "what that flow refers to", FlowBasis.class).orEmpty(),
                code("stated", "for which place that flow is stated", StatedAt.class)
                        .orEmpty(),
                code("nozzle", "blast nozzle, by its number in sixteenths of an inch", BlastNozzle.class)
                        .orEmpty(),
                reading("bore", "bore of another nozzle", Si.LENGTH).orEmpty(),
                code("edge", "edge of that nozzle", NozzleEdge.class).orEmpty(),
                reading("pressure", "pressure at it while it runs, gauge", Si.GAUGE)
                        .orEmpty(),
                reading("least_pressure", "pressure below which it does not do its work, gauge", Si.GAUGE)
                        .orEmpty(),
                reading("use_factor", "share of the time in which one runs", null)
                        .orEmpty(),
                reading("reserve", "what is added when sizing", null).orEmpty(),
                reading("uncertainty", "relative standard uncertainty of the air of one", null)
                        .orEmpty(),
                reading("event_length", "how long an event lasts", Si.TIME).orEmpty(),
                reading("event_every", "from the start of one event to that of the next", Si.TIME)
                        .orEmpty(),
                RegisterFiles.NOTE,
                of(CellKind.FLAG, "in_service", "false once it is out of use"),
                RegisterFiles.VERSION);
    }

    private static DataFile choices() {
        return DataFile.of(
                "supply_choices",
                "supply_choice",
                "how a site reckons its supply",
                RegisterFiles.BY_ID,
                id("choice_id", "id", "number of the record"),
                OF_SITE,
                reading("working_pressure", "pressure at which the supply is told, gauge", Si.GAUGE),
                reading("reserve", "for items that name none", null).orEmpty(),
                reading("uncertainty", "relative standard uncertainty of items that name none", null)
                        .orEmpty(),
                code("leaks_from", "where the leaks come from", LeaksFrom.class),
                reading("leaks", "leaks where they were typed, free air", Si.FLOW)
                        .orEmpty(),
                reading("leaks_uncertainty", "their relative standard uncertainty", null)
                        .orEmpty(),
                RegisterFiles.NOTE,
                RegisterFiles.VERSION);
    }

    private static DataFile standby() {
        return DataFile.of(
                "supply_standby",
                "supply_standby",
                "a machine that does not run together with the others",
                List.of("choice_id", "compressor_id"),
                id("choice_id", "choice_id", "the choice of its site, in supply_choices.csv"),
                id("compressor_id", "compressor_id", "the machine, in compressors.csv"),
                text("tag", "how the plant called it when it was chosen"));
    }
}
