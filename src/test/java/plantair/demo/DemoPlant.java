package plantair.demo;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import plantair.equipment.Compressor;
import plantair.pumpup.VolumePart;
import plantair.site.Site;
import plantair.testrecord.VolumeCopy;

/** The whole demo plant, simulated. Same digits each time. */
final class DemoPlant {

    private DemoPlant() {}

    /** All tests in the order in which they were recorded. */
    static List<DemoTest> tests() {
        return Stream.of(Machines.C01, Machines.C02, Machines.C03, Machines.C04, Machines.C11, Machines.C12)
                .flatMap(machine -> new Campaign(machine, compressor(machine.tag()), volumes(machine))
                        .tests(Stories.of(machine.tag())).stream())
                .sorted(Comparator.comparing(DemoTest::recordedAt))
                .toList();
    }

    private static Compressor compressor(String tag) {
        var found = Registers.COMPRESSORS.stream()
                .filter(one -> one.facts().name().equals(tag))
                .findFirst()
                .orElseThrow();
        var site = Registers.SITES.stream()
                .filter(one -> one.name().equals(found.site()))
                .findFirst()
                .orElseThrow();
        return new Compressor(new Site(site), found.facts());
    }

    static List<VolumeCopy> volumes(Machine machine) {
        return machine.tags().stream().map(DemoPlant::volume).toList();
    }

    /** The copy that a test keeps; the id is looked up by the SQL. */
    private static VolumeCopy volume(String tag) {
        var receivers = Registers.RECEIVERS.stream()
                .map(one -> one.facts())
                .filter(facts -> facts.tag().equals(tag))
                .map(facts -> new VolumeCopy(
                        VolumePart.Kind.RECEIVER,
                        0,
                        tag,
                        facts.volume(),
                        null,
                        null,
                        facts.mawp(),
                        facts.volumeKnownBy()));
        var pipes = Registers.PIPES.stream()
                .map(one -> one.facts())
                .filter(facts -> facts.tag().equals(tag))
                .map(facts -> new VolumeCopy(
                        VolumePart.Kind.PIPE, 0, tag, facts.volume(), facts.length(), facts.bore(), null));
        return Stream.concat(receivers, pipes).findFirst().orElseThrow();
    }
}
