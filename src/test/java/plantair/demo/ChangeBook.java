package plantair.demo;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.equipment.CompressorFacts;
import plantair.equipment.CompressorPlate;
import plantair.equipment.ReceiverFacts;
import plantair.quantity.Entered;
import plantair.register.ChangeKind;
import plantair.register.Facts;

/** Who entered and changed what in the registers of the demo plant. */
final class ChangeBook {

    static final String KEEPER = "Marguerite Bélanger";

    private static final Instant OPENED = Instant.parse("2020-01-13T16:30:00Z");
    private static final String FIRST_ENTRY = "first entry, walked round with a torch";

    private static final List<Revision> REVISIONS = List.of(
            new Revision(
                    Instant.parse("2021-10-05T20:10:00Z"),
                    "Søren Kjærgaard",
                    ChangeKind.RECEIVER,
                    inUse(receiver("R-13")),
                    "taken out of use in the rebuild"),
            new Revision(
                    Instant.parse("2023-06-09T14:45:00Z"),
                    KEEPER,
                    ChangeKind.COMPRESSOR,
                    noted(compressor("C-01"), "Two-stage, three cylinders."),
                    "valve job of 8 June written down"),
            new Revision(
                    Instant.parse("2024-03-21T21:05:00Z"),
                    "Amina Diallo",
                    ChangeKind.RECEIVER,
                    relief(receiver("R-11"), "150 [psi]"),
                    "old valve weeping, this is what the store had"));

    private ChangeBook() {}

    /**
     * A line of the change log.
     *
     * @param at when
     * @param by who
     * @param kind what
     * @param name how people call it
     * @param before null when it was new
     * @param after what it said then
     * @param reason why
     */
    record Change(
            Instant at,
            String by,
            ChangeKind kind,
            String name,
            @Nullable String before,
            String after,
            String reason) {}

    /** A change of a thing whose facts were other before. */
    private record Revision(Instant at, String by, ChangeKind kind, Facts before, String reason) {}

    /** How often a thing was changed. */
    static int version(Facts facts) {
        return (int) REVISIONS.stream()
                .filter(revision -> revision.before().name().equals(facts.name()))
                .count();
    }

    /** Every change of the registers in order of time. */
    static List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        Registers.SITES.forEach(facts -> enter(changes, ChangeKind.SITE, facts));
        Registers.COMPRESSORS.forEach(one -> enter(changes, ChangeKind.COMPRESSOR, one.facts()));
        Registers.RECEIVERS.forEach(one -> enter(changes, ChangeKind.RECEIVER, one.facts()));
        Registers.PIPES.forEach(one -> enter(changes, ChangeKind.PIPE, one.facts()));
        changes.sort(Comparator.comparing(Change::at));
        return changes;
    }

    private static void enter(List<Change> changes, ChangeKind kind, Facts now) {
        Instant at = OPENED.plus(3L * changes.size(), ChronoUnit.MINUTES);
        var revision = REVISIONS.stream()
                .filter(one -> one.before().name().equals(now.name()))
                .findFirst();
        String first = revision.map(Revision::before).orElse(now).lines();
        changes.add(new Change(at, KEEPER, kind, now.name(), null, first, FIRST_ENTRY));
        revision.ifPresent(
                one -> changes.add(new Change(one.at(), one.by(), kind, now.name(), first, now.lines(), one.reason())));
    }

    private static CompressorFacts compressor(String tag) {
        return Registers.COMPRESSORS.stream()
                .map(one -> one.facts())
                .filter(facts -> facts.name().equals(tag))
                .findFirst()
                .orElseThrow();
    }

    private static ReceiverFacts receiver(String tag) {
        return Registers.RECEIVERS.stream()
                .map(one -> one.facts())
                .filter(facts -> facts.tag().equals(tag))
                .findFirst()
                .orElseThrow();
    }

    private static ReceiverFacts inUse(ReceiverFacts now) {
        return new ReceiverFacts(
                now.tag(), now.volume(), now.volumeKnownBy(), null, null, null, "Plate painted over.", true);
    }

    private static ReceiverFacts relief(ReceiverFacts now, String set) {
        return new ReceiverFacts(
                now.tag(),
                now.volume(),
                now.volumeKnownBy(),
                now.mawp(),
                Entered.parse(set),
                now.certificateDue(),
                "",
                true);
    }

    private static CompressorFacts noted(CompressorFacts now, String note) {
        CompressorPlate p = now.plate();
        var plate = new CompressorPlate(
                p.tag(),
                p.makerModel(),
                p.serialNumber(),
                p.kind(),
                p.stages(),
                p.drive(),
                p.control(),
                p.motorPower(),
                p.motorVoltage(),
                p.motorCurrent(),
                p.motorPhases(),
                p.frequency(),
                p.ratedSpeed(),
                p.displacement(),
                p.loadedHours(),
                note,
                true);
        return new CompressorFacts(plate, now.ratings());
    }
}
