package plantair.equipment.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plantair.equipment.RatingEntry;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.register.Submission;

/**
 * Reads the rating points of a form. Blank rows are left out.
 *
 * @param sent the form
 */
record RatingRows(Submission sent) {

    /** The most that a compressor may have. */
    static final int MOST = 12;

    /** Every row that can be read, in order. */
    List<RatingEntry> read(List<RatingRow> rows) {
        List<RatingEntry> ratings = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            String path = "ratings[" + i + "]";
            Optional<RatingEntry> rating = rows.get(i).isBlank() ? Optional.empty() : read(path, rows.get(i));
            if (rating.isPresent() && ratings.stream().anyMatch(other -> isSamePoint(other, rating.get()))) {
                sent.reject(path + ".pressure.number", "compressor.ratings.twice");
            }
            rating.ifPresent(ratings::add);
        }
        if (ratings.size() > MOST) {
            sent.reject("ratings[" + MOST + "].pressure.number", "compressor.ratings.tooMany");
        }
        return ratings;
    }

    private Optional<RatingEntry> read(String path, RatingRow row) {
        var typing = new Typing(sent);
        var pressure = typing.required(path + ".pressure", row.getPressure(), PressureUnit.class, Usual.PRESSURE);
        var flow = typing.required(path + ".flow", row.getFlow(), FlowUnit.class, Usual.FLOW);
        var basis = sent.checks().choice(path + ".basis", row.getBasis(), FlowBasis.class);
        if (pressure.isEmpty() || flow.isEmpty() || basis.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new RatingEntry(pressure.get(), flow.get(), basis.get()));
    }

    private static boolean isSamePoint(RatingEntry a, RatingEntry b) {
        return a.basis() == b.basis() && GaugePressure.of(a.pressure()).equals(GaugePressure.of(b.pressure()));
    }
}
