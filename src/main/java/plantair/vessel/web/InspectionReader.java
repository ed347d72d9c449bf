package plantair.vessel.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plantair.quantity.Entered;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.register.Submission;
import plantair.vessel.InspectionDraft;
import plantair.vessel.InspectionKind;
import plantair.vessel.WallEntry;
import plantair.vessel.WallPart;

/**
 * Reads the form of an inspection.
 *
 * @param sent the form
 */
record InspectionReader(Submission sent) {

    private static final int LATEST_YEARS = 50;
    private static final double THINNEST_MM = 0.5;
    private static final double THICKEST_MM = 60;

    /** The inspection; empty when something is wrong with what was typed. */
    Optional<InspectionDraft> read(InspectionForm form, Vessel vessel) {
        var checks = sent.checks();
        var typing = new Typing(sent);
        var mark = typing.submission(form.getSubmission());
        var kind = checks.choice("kind", form.getKind(), InspectionKind.class);
        var day = typing.past("doneOn", form.getDoneOn(), vessel.today(), true);
        var inspector = checks.text("inspector", form.getInspector(), 120, true);
        var employer = checks.text("employer", form.getEmployer(), 120, false);
        var findings = checks.text("findings", form.getFindings(), 4_000, false);
        var reduced = typing.pressure("reducedMawp", form.getReducedMawp(), false);
        reduced.ifPresent(
                typed -> typing.askAbove("reducedMawp", typed, vessel.mawp(), "inspection.reducedMawp.higher"));
        var next = checks.date("nextDue", form.getNextDue(), false);
        day.ifPresent(done -> checkNext(done, next));
        var instrument = checks.text("instrument", form.getInstrument(), 120, false);
        var accuracy = checks.positive("accuracy", checks.optional("accuracy", form.getAccuracy(), LengthUnit.class));
        List<WallEntry> readings = readings(form);
        if (mark.isEmpty() || kind.isEmpty() || day.isEmpty() || inspector.isEmpty()) {
            return Optional.empty();
        }
        var report = new InspectionDraft.Report(
                kind.get(),
                day.get(),
                inspector.get(),
                employer.orElse(""),
                findings.orElse(""),
                reduced.orElse(null),
                next.orElse(null),
                instrument.orElse(""),
                accuracy.orElse(null));
        return Optional.of(new InspectionDraft(mark.get(), vessel.id(), report, readings));
    }

    private void checkNext(LocalDate done, Optional<LocalDate> next) {
        if (next.isPresent() && !next.get().isAfter(done)) {
            sent.reject("nextDue", "inspection.nextDue.early");
        } else if (next.isPresent() && next.get().isAfter(done.plusYears(LATEST_YEARS))) {
            sent.reject("nextDue", "inspection.nextDue.late");
        }
    }

    private List<WallEntry> readings(InspectionForm form) {
        List<WallEntry> readings = new ArrayList<>();
        if (form.getReadings().size() > InspectionForm.MOST_READINGS) {
            sent.reject("readings[" + InspectionForm.MOST_READINGS + "].place", "inspection.readings.tooMany");
            return readings;
        }
        for (int i = 0; i < form.getReadings().size(); i++) {
            WallRow row = form.getReadings().get(i);
            if (!row.isBlank()) {
                reading("readings[" + i + "]", row, readings);
            }
        }
        if (readings.isEmpty() && form.getKind().equals(InspectionKind.THICKNESS.name())) {
            sent.reject("kind", "inspection.readings.none");
        }
        return readings;
    }

    private void reading(String path, WallRow row, List<WallEntry> readings) {
        var checks = sent.checks();
        var place = checks.text(path + ".place", row.getPlace(), 60, true);
        var part = checks.choice(path + ".part", row.getPart(), WallPart.class);
        var thickness = checks.positive(
                path + ".thickness", checks.required(path + ".thickness", row.getThickness(), LengthUnit.class));
        if (place.isPresent() && readings.stream().anyMatch(one -> one.place().equalsIgnoreCase(place.get()))) {
            sent.reject(path + ".place", "inspection.readings.twice");
        } else if (place.isPresent() && part.isPresent() && thickness.isPresent()) {
            ask(path + ".thickness", thickness.get());
            readings.add(new WallEntry(place.get(), part.get(), thickness.get()));
        }
    }

    private void ask(String path, Entered thickness) {
        double millimetres = Length.of(thickness).in(LengthUnit.MILLIMETRE);
        if (millimetres < THINNEST_MM || millimetres > THICKEST_MM) {
            sent.warnings().add(path, "unusual.WALL", thickness.toString());
        }
    }
}
