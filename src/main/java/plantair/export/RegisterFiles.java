package plantair.export;

import static plantair.export.DataColumn.code;
import static plantair.export.DataColumn.id;
import static plantair.export.DataColumn.of;
import static plantair.export.DataColumn.reading;
import static plantair.export.DataColumn.text;

import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import plantair.equipment.CompressorKind;
import plantair.equipment.Control;
import plantair.equipment.Drive;
import plantair.equipment.VolumeKnownBy;
import plantair.quantity.FlowBasis;

/** The registers of sites and equipment, and the limits of the sites, as they are now. */
final class RegisterFiles {

    static final DataColumn VERSION = of(CellKind.WHOLE, "version", "how often it was changed");
    static final DataColumn NOTE = text("note", "free text");
    static final DataColumn IN_SERVICE = of(CellKind.FLAG, "in_service", "false once it is retired");
    static final List<String> BY_ID = List.of("id");

    private static final DataColumn OF_SITE = id("site_id", "site_id", "its site, in sites.csv");
    private static final DataColumn TAG = text("tag", "how the plant calls it");

    private RegisterFiles() {}

    static Stream<DataFile> all() {
        return Stream.of(
                sites(), compressors(), ratings("ratings", "rating_point", "compressor_id"), receivers(), pipes());
    }

    private static DataFile sites() {
        return DataFile.of(
                "sites",
                "site",
                "a site",
                BY_ID,
                id("site_id", "id", "number of the site"),
                text("name", "how people call it"),
                code("zone", "id of its time zone", ZoneId::of),
                reading("elevation", "elevation above sea level", Si.LENGTH).orEmpty(),
                reading("barometer", "normal station pressure, absolute; wins over the elevation", Si.ABSOLUTE)
                        .orEmpty(),
                text("currency", "currency of the tariff").orEmpty(),
                reading("tariff", "money for a kilowatt hour", null).orEmpty(),
                NOTE,
                VERSION);
    }

    private static DataFile compressors() {
        return DataFile.of(
                        "compressors",
                        "compressor",
                        "a compressor",
                        BY_ID,
                        id("compressor_id", "id", "number of the compressor"),
                        OF_SITE,
                        TAG,
                        text("maker_model", "maker and model"),
                        text("serial_number", "serial number"),
                        code("kind", "how it compresses", CompressorKind.class),
                        of(CellKind.WHOLE, "stages", "number of stages"),
                        code("drive", "how the motor turns it", Drive.class),
                        code("control", "how it follows demand", Control.class),
                        reading("motor_power", "plate power of the motor", Si.POWER)
                                .orEmpty(),
                        reading("motor_voltage", "plate voltage", null).orEmpty(),
                        reading("motor_current", "full-load current", null).orEmpty(),
                        of(CellKind.WHOLE, "motor_phases", "phases of the motor")
                                .orEmpty(),
                        reading("frequency", "supply frequency", null).orEmpty(),
                        reading("rated_speed", "shaft speed of the rating", null)
                                .orEmpty(),
                        reading("displacement", "swept volume of the first stage times speed", Si.FLOW)
                                .orEmpty(),
                        reading("loaded_hours", "hours loaded in a year", null).orEmpty(),
                        NOTE,
                        IN_SERVICE,
                        VERSION)
                .ofMachine("id = ?");
    }

    static DataFile ratings(String name, String table, String owner) {
        return DataFile.of(
                        name,
                        table,
                        "a rating point, as typed from plate or data sheet",
                        List.of(owner, "position"),
                        id(owner, owner, "number of the compressor or test"),
                        of(CellKind.PLACE, "position", "place among its rating points, from 1"),
                        reading("pressure", "discharge pressure, gauge", Si.GAUGE),
                        reading("flow", "rated flow", Si.FLOW),
                        code("basis", "what that flow refers to", FlowBasis.class))
                .ofMachine(owner + " = ?");
    }

    private static DataFile receivers() {
        return DataFile.of(
                "receivers",
                "receiver",
                "an air receiver",
                BY_ID,
                id("receiver_id", "id", "number of the receiver"),
                OF_SITE,
                TAG,
                reading("volume", "gross volume", Si.VOLUME),
                code("volume_known_by", "how the volume is known", VolumeKnownBy.class),
                reading("mawp", "maximum allowable working pressure from the plate, gauge", Si.GAUGE)
                        .orEmpty(),
                reading("relief_set", "set pressure of the relief valve, gauge", Si.GAUGE)
                        .orEmpty(),
                of(CellKind.DAY, "certificate_due", "last day of its certificate or permit")
                        .orEmpty(),
                reading("cut_out", "highest pressure at which what fills it stops, gauge", Si.GAUGE)
                        .orEmpty(),
                of(CellKind.FLAG, "certificate_required", "whether the plant says that it needs a certificate")
                        .orEmpty(),
                reading("shell_required", "least thickness that its shell needs", Si.LENGTH)
                        .orEmpty(),
                reading("head_required", "least thickness that its heads need", Si.LENGTH)
                        .orEmpty(),
                NOTE,
                IN_SERVICE,
                VERSION);
    }

    private static DataFile pipes() {
        return DataFile.of(
                "pipes",
                "pipe_piece",
                "a length of pipe, or another piece that counts as volume",
                BY_ID,
                id("pipe_id", "id", "number of the piece"),
                OF_SITE,
                TAG,
                reading("length", "length along the pipe", Si.LENGTH).orEmpty(),
                reading("bore", "inside diameter", Si.LENGTH).orEmpty(),
                reading("volume", "volume of a cooler, dryer or filter", Si.VOLUME)
                        .orEmpty(),
                NOTE,
                IN_SERVICE,
                VERSION);
    }
}
