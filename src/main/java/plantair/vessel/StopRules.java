package plantair.vessel;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.equipment.ReceiverFacts;
import plantair.equipment.VesselHazard;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;

/**
 * What forbids to pump a receiver up. Where valves or certificates are registered, they count and not the set pressure and
 * the date that the register of receivers kept before there was one of them.
 *
 * @param facts of the receiver
 * @param file its records
 * @param valveInterval within which its site wants relief valves tested; null when none is set
 * @param day at its site
 * @param words for what stands for a figure
 */
record StopRules(
        ReceiverFacts facts, VesselFile file, @Nullable ValveInterval valveInterval, LocalDate day, StopWords words) {

    /** Two pressures typed in two units may differ in the last digit of the machine. */
    private static final double SAME = 1 + 1e-9;

    /**
     * A stop.
     *
     * @param hazard what
     * @param wording which of its texts; empty for the usual one
     * @param figures of the text
     */
    record Found(VesselHazard hazard, String wording, List<Object> figures) {

        static Found of(VesselHazard hazard, Object... figures) {
            return new Found(hazard, "", List.of(figures));
        }
    }

    /** A pressure that must not be exceeded, and how it is called. */
    private record Limit(Entered pressure, String text) {}

    /** All of them, the gravest first. */
    List<Found> all() {
        List<Found> found = new ArrayList<>();
        file.findings()
                .forEach(one -> found.add(
                        Found.of(VesselHazard.DAMAGE_REPORTED, one.foundOn(), words.damage(one.kind(), one.note()))));
        wall(found);
        Optional<Limit> mawp = mawp();
        if (mawp.isEmpty()) {
            found.add(Found.of(VesselHazard.MAWP_UNKNOWN));
        }
        Entered cutOut = facts.cutOut();
        mawp.filter(limit -> cutOut != null && isAbove(cutOut, limit.pressure()))
                .ifPresent(limit ->
                        found.add(Found.of(VesselHazard.CUT_OUT_ABOVE_MAWP, String.valueOf(cutOut), limit.text())));
        valves(found, mawp);
        certificate(found);
        found.sort(Comparator.comparing(Found::hazard));
        return found;
    }

    private void wall(List<Found> found) {
        file.wall(facts).forEach((name, place) -> {
            if (place.isBelowRequired()) {
                found.add(Found.of(
                        VesselHazard.WALL_BELOW_REQUIRED,
                        name,
                        words.thickness(place.last().thickness()),
                        place.last().day(),
                        words.thickness(place.required())));
            }
        });
    }

    /** The lower of what the plate allows and what the last inspection that reduced it left. */
    private Optional<Limit> mawp() {
        Optional<Limit> plate =
                Optional.ofNullable(facts.mawp()).map(pressure -> new Limit(pressure, pressure.toString()));
        Optional<Limit> reduced = file.reduced()
                .map(report -> new Limit(report.reducedMawp(), words.reduced(report.reducedMawp(), report.doneOn())));
        return plate.isPresent()
                        && reduced.isPresent()
                        && isAbove(reduced.get().pressure(), plate.get().pressure())
                ? plate
                : reduced.or(() -> plate);
    }

    private void valves(List<Found> found, Optional<Limit> mawp) {
        List<ReliefValve> inService = file.valves().stream()
                .filter(valve -> valve.facts().inService())
                .toList();
        for (ReliefValve valve : inService) {
            opens(found, mawp, valve.facts().tag(), valve.facts().setPressure());
            tested(found, valve);
        }
        Entered old = facts.reliefSet();
        if (file.valves().isEmpty() && old != null) {
            opens(found, mawp, words.asRegistered(), old);
        } else if (inService.isEmpty()) {
            found.add(Found.of(VesselHazard.RELIEF_UNKNOWN));
        }
    }

    private void opens(List<Found> found, Optional<Limit> mawp, String tag, Entered set) {
        mawp.filter(limit -> isAbove(set, limit.pressure()))
                .ifPresent(limit ->
                        found.add(Found.of(VesselHazard.RELIEF_ABOVE_MAWP, tag, set.toString(), limit.text())));
        inForce()
                .map(VesselCertificate::facts)
                .filter(paper -> paper.permitted() != null && isAbove(set, paper.permitted()))
                .ifPresent(paper -> found.add(Found.of(
                        VesselHazard.RELIEF_ABOVE_PERMIT,
                        tag,
                        set.toString(),
                        paper.number(),
                        String.valueOf(paper.permitted()))));
    }

    private void tested(List<Found> found, ReliefValve valve) {
        Optional<ValveTestDraft> last = file.lastTest(valve).map(ValveTest::draft);
        String tag = valve.facts().tag();
        if (last.isPresent() && !last.get().passed()) {
            found.add(Found.of(VesselHazard.RELIEF_FAILED, tag, last.get().doneOn()));
        } else if (valveInterval != null) {
            LocalDate from =
                    last.map(ValveTestDraft::doneOn).orElse(valve.facts().installedOn());
            String authority = words.authority(valveInterval.authority());
            if (from == null) {
                found.add(new Found(
                        VesselHazard.RELIEF_OVERDUE, ".never", List.of(tag, valveInterval.months(), authority)));
            } else if (from.plusMonths(valveInterval.months()).isBefore(day)) {
                LocalDate due = from.plusMonths(valveInterval.months());
                found.add(Found.of(VesselHazard.RELIEF_OVERDUE, tag, due, valveInterval.months(), authority));
            }
        }
    }

    /** The certificate that counts: of those in force the one that runs longest. */
    private Optional<VesselCertificate> inForce() {
        return file.certificates().stream()
                .filter(paper -> paper.facts().inForce())
                .max(Comparator.comparing(
                        paper -> Optional.ofNullable(paper.facts().validTo()).orElse(LocalDate.MAX)));
    }

    private void certificate(List<Found> found) {
        if (Boolean.FALSE.equals(facts.certificateRequired())) {
            return;
        }
        Optional<VesselCertificate> paper = inForce();
        LocalDate old = file.certificates().isEmpty() ? facts.certificateDue() : null;
        if (paper.isPresent()) {
            paper.map(VesselCertificate::facts)
                    .filter(one -> one.isExpired(day))
                    .ifPresent(
                            one -> found.add(Found.of(VesselHazard.CERTIFICATE_EXPIRED, one.number(), one.validTo())));
        } else if (old != null && old.isBefore(day)) {
            found.add(Found.of(VesselHazard.CERTIFICATE_EXPIRED, words.noNumber(), old));
        } else if (old == null && Boolean.TRUE.equals(facts.certificateRequired())) {
            found.add(Found.of(VesselHazard.CERTIFICATE_MISSING));
        }
    }

    private static boolean isAbove(Entered a, Entered b) {
        return GaugePressure.of(a).pascals() > GaugePressure.of(b).pascals() * SAME;
    }
}
