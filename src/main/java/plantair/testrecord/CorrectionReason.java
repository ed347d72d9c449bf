package plantair.testrecord;

import org.jspecify.annotations.Nullable;

/**
 * Why a test is corrected.
 *
 * @param why what was wrong with it
 * @param thoughReviewed why although somebody had reviewed it; null where nobody had
 */
public record CorrectionReason(String why, @Nullable String thoughReviewed) {

    /** Of a test that nobody reviewed. */
    public static CorrectionReason of(String why) {
        return new CorrectionReason(why, null);
    }

    /** As it stands in the record. */
    String text() {
        return thoughReviewed == null ? why : why + "\nAlthough it was reviewed: " + thoughReviewed;
    }
}
