package plantair.demo;

import plantair.equipment.CompressorPlate;
import plantair.equipment.ReceiverFacts;

/** The registers as SQL. */
final class RegisterSql {

    private final Script script;

    RegisterSql(Script script) {
        this.script = script;
    }

    void add() {
        for (var site : Registers.SITES) {
            script.add(new Insert("site")
                    .set("name", site.name())
                    .set("zone", site.zone())
                    .set("elevation", site.elevation())
                    .set("barometer", site.barometer())
                    .set("currency", site.currency())
                    .set("tariff", site.tariff())
                    .set("note", site.note())
                    .set("version", ChangeBook.version(site)));
        }
        for (var one : Registers.COMPRESSORS) {
            compressor(one.site(), one.facts().plate(), ChangeBook.version(one.facts()));
            script.ratings(
                    "rating_point",
                    "compressor_id",
                    Script.id("compressor", one.facts().name()),
                    one.facts().ratings());
        }
        Registers.RECEIVERS.forEach(one -> receiver(one.site(), one.facts()));
        for (var one : Registers.PIPES) {
            script.add(new Insert("pipe_piece")
                    .setSql("site_id", Script.id("site", one.site()))
                    .set("tag", one.facts().tag())
                    .set("length", one.facts().length())
                    .set("bore", one.facts().bore())
                    .set("volume", one.facts().volume())
                    .set("note", one.facts().note())
                    .set("in_service", one.facts().inService())
                    .set("version", ChangeBook.version(one.facts())));
        }
    }

    private void compressor(String site, CompressorPlate plate, int version) {
        script.add(new Insert("compressor")
                .setSql("site_id", Script.id("site", site))
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
    }

    private void receiver(String site, ReceiverFacts facts) {
        script.add(new Insert("receiver")
                .setSql("site_id", Script.id("site", site))
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
                .set("version", ChangeBook.version(facts)));
    }
}
