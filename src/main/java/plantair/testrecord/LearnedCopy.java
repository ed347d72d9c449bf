package plantair.testrecord;

import jakarta.persistence.Embeddable;
import plantair.pumpup.LearnedFactor;

/**
 * The warming factor that the machine had shown by the day of recording, copied so that later tests move no result.
 *
 * @param learnedFactor F
 * @param learnedUncertainty its relative standard uncertainty
 * @param learnedFrom number of tests
 */
@Embeddable
public record LearnedCopy(Double learnedFactor, Double learnedUncertainty, Integer learnedFrom) {

    static LearnedCopy of(LearnedFactor factor) {
        return new LearnedCopy(factor.factor(), factor.relativeU(), factor.tests());
    }

    LearnedFactor factor() {
        return new LearnedFactor(learnedFactor, learnedUncertainty, learnedFrom);
    }
}
