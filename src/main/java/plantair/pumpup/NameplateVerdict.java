package plantair.pumpup;

import plantair.statistics.Conformity;

/**
 * Whether the machine meets its nameplate, as far as the uncertainty lets it be told (M15).
 *
 * @param tolerance of the rating, as a part of the rated flow
 * @param probability that the true flow lies above the rated flow less its tolerance
 * @param verdict what can be said
 * @param settledBy combined relative standard uncertainty that would settle it at this flow; the present one or more when
 *     it is settled
 */
public record NameplateVerdict(double tolerance, double probability, Verdict verdict, double settledBy) {

    /** What can be said. */
    public enum Verdict {
        /** Probability 0.95 or more. */
        MEETS,
        /** Probability 0.05 or less. */
        DOES_NOT_MEET,
        /** Anything between. */
        CANNOT_BE_TOLD
    }

    static NameplateVerdict of(RatingComparison rating, Uncertainty uncertainty) {
        return of(rating, uncertainty.combined());
    }

    /** The same from a combined relative standard uncertainty. */
    static NameplateVerdict of(RatingComparison rating, double relativeU) {
        double tolerance = RatingTolerance.of(rating.expected());
        double limit = 1 - tolerance;
        double u = relativeU * rating.ratio();
        double probability = Conformity.probabilityAbove(rating.ratio(), u, limit);
        Verdict verdict = probability >= Conformity.SURE
                ? Verdict.MEETS
                : probability <= 1 - Conformity.SURE ? Verdict.DOES_NOT_MEET : Verdict.CANNOT_BE_TOLD;
        return new NameplateVerdict(
                tolerance,
                probability,
                verdict,
                Conformity.settlingUncertainty(rating.ratio(), limit) / rating.ratio());
    }
}
