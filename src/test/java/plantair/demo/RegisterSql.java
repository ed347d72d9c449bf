package plantair.demo;

import plantair.equipment.CompressorFacts;
import plantair.equipment.CompressorPlate;
import plantair.equipment.PipeFacts;
import plantair.equipment.ReceiverFacts;
import plantair.site.SiteFacts;

/** The registers as SQL. */
final class RegisterSql {

    private final Script script;

    RegisterSql(Script script) {
        this.script = script;
    }

    void add() {
        for (var site : Registers.SITES) {
            site(site, ChangeBook.version(site));
        }
        for (var one : Registers.COMPRESSORS) {
            compressor(one.site(), one.facts(), ChangeBook.version(one.facts()));
        }
        Registers.RECEIVERS.forEach(one -> receiver(one.site(), one.facts(), ChangeBook.version(one.facts())));
        Registers.PIPES.forEach(one -> pipe(one.site(), one.facts(), ChangeBook.version(one.facts())));
    }

    void site(SiteFacts site, int version) {
        script.add(new Insert("site")
                .set("name", site.name())
                .set("zone", site.zone())
                .set("elevation", site.elevation())
                .set("barometer", site.barometer())
                .set("currency", site.currency())
                .set("tariff", site.tariff())
                .set("note", site.note())
                .set("version", version));
    }

    void pipe(String site, PipeFacts facts, int version) {
        script.add(new Insert("pipe_piece")
                .set("site_id", script.idOf("site", site))
                .set("tag", facts.tag())
                .set("length", facts.length())
                .set("bore", facts.bore())
                .set("volume", facts.volume())
                .set("note", facts.note())
                .set("in_service", facts.inService())
                .set("version", version));
    }

    void compressor(String site, CompressorFacts facts, int version) {
        CompressorPlate plate = facts.plate();
        script.add(new Insert("compressor")
                .set("site_id", script.idOf("site", site))
                .set("tag", plate.tag())
                .set("maker_model", plate.makerModel())
                .set("serial_number", plate.serialNumber())
                .set("kind", plate.kind())
                .set("stages", plate.stages())
                .set("drive", plate.drive())
                .set("control", plate.control())
                .set("motor_power", plate.motorPower())
                .set("motor_voltage", plate.motorVoltage())
                .set("motor_current", plate.motorCurrent())
                .set("motor_phases", plate.motorPhases())
                .set("frequency", plate.frequency())
                .set("rated_speed", plate.ratedSpeed())
                .set("loaded_hours", plate.loadedHours())
                .set("note", plate.note())
                .set("in_service", plate.inService())
                .set("version", version));
        script.ratings("rating_point", "compressor_id", script.idOf("compressor", plate.tag()), facts.ratings());
    }

    void receiver(String site, ReceiverFacts facts, int version) {
        script.add(new Insert("receiver")
                .set("site_id", script.idOf("site", site))
                .set("tag", facts.tag())
                .set("volume", facts.volume())
                .set("volume_known_by", facts.volumeKnownBy())
                .set("mawp", facts.mawp())
                .set("relief_set", facts.reliefSet())
                .set("certificate_due", facts.certificateDue())
                .set("cut_out", facts.cutOut())
                .set("certificate_required", facts.certificateRequired())
                .set("shell_required", facts.shellRequired())
                .set("head_required", facts.headRequired())
                .set("note", facts.note())
                .set("in_service", facts.inService())
                .set("version", version));
    }
}
