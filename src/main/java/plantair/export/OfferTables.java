package plantair.export;

import static plantair.export.DataColumn.code;
import static plantair.export.DataColumn.id;
import static plantair.export.DataColumn.of;
import static plantair.export.DataColumn.reading;
import static plantair.export.DataColumn.text;

import java.util.stream.Stream;
import plantair.quantity.FlowBasis;

/** The register of offers, as it is now. */
final class OfferTables {

    private OfferTables() {}

    static Stream<DataFile> all() {
        return Stream.of(offers());
    }

    private static DataFile offers() {
        return DataFile.of(
                "offers",
                "offer",
                "an offer of a compressor for a site, as its data sheet states it",
                RegisterFiles.BY_ID,
                id("offer_id", "id", "number of the offer"),
                id("site_id", "site_id", "its site, in sites.csv"),
                text("label", "whose offer, and of what"),
                of(CellKind.DAY, "offered_on", "day of the offer").orEmpty(),
                reading("flow", "stated flow", Si.FLOW),
                code("basis", "what that flow refers to", FlowBasis.class),
                reading("pressure", "discharge pressure at which flow and power are stated, gauge", Si.GAUGE),
                reading("power", "electric input power at that point", Si.POWER),
                reading("station", "absolute pressure of the intake for which they are stated", Si.ABSOLUTE),
                reading("temperature", "temperature of that intake", Si.TEMPERATURE),
                reading("humidity", "relative humidity of that intake", null),
                reading("price", "price, in the currency of the site", null).orEmpty(),
                RegisterFiles.NOTE,
                of(CellKind.FLAG, "open", "false once it is withdrawn or lost"),
                RegisterFiles.VERSION);
    }
}
