package plantair.storage.web;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import plantair.equipment.Compressor;
import plantair.equipment.Receiver;
import plantair.leaktest.SiteLeak;
import plantair.quantity.AbsolutePressure;
import plantair.testrecord.MeasuredOutput;
import plantair.vessel.VesselLimit;
import plantair.web.Choice;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/**
 * What a site has for storage, as its registers and tests tell.
 *
 * @param id of the site
 * @param station its barometric pressure
 * @param receivers in service
 * @param limits how high each of them may be taken, by id; none where it is not known
 * @param compressors in service
 * @param outputs what each of them was measured to deliver, by id; none where no test tells it
 * @param leak its newest leak
 * @param events those of its demand whose air can be told
 */
record StorageSite(
        long id,
        AbsolutePressure station,
        List<Receiver> receivers,
        Map<Long, VesselLimit> limits,
        List<Compressor> compressors,
        Map<Long, MeasuredOutput> outputs,
        Optional<SiteLeak> leak,
        List<StorageEvent> events) {

    List<Receiver> receivers(Collection<String> ids) {
        return receivers.stream()
                .filter(receiver -> ids.contains(String.valueOf(receiver.id())))
                .toList();
    }

    /** Those of which a test tells what they deliver. */
    List<Compressor> measured() {
        return compressors.stream()
                .filter(compressor -> outputs.containsKey(compressor.id()))
                .toList();
    }

    /** All receivers and all measured machines, and the event that the address names. */
    void fill(StorageForm form, UnitSet units) {
        events.stream()
                .filter(event -> String.valueOf(event.id()).equals(form.getUse()))
                .forEach(event -> form.take(event, units));
        receivers.forEach(receiver -> form.getReceivers().add(String.valueOf(receiver.id())));
        measured().forEach(machine -> form.getMachines().add(String.valueOf(machine.id())));
    }

    /** A measured machine as one of a list. */
    Choice choice(Compressor machine, QuantityFormat format) {
        MeasuredOutput output = Objects.requireNonNull(outputs.get(machine.id()));
        return new Choice(
                String.valueOf(machine.id()),
                machine.tag() + ": " + format.flow(output.flow()) + ", " + format.gauge(output.at()) + ", "
                        + output.on());
    }
}
