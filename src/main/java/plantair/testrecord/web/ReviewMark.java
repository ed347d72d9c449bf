package plantair.testrecord.web;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import plantair.testrecord.TestReview;

/**
 * That a test was reviewed.
 *
 * @param by by whom
 * @param at when, in UTC
 * @param note what the reviewer wrote; may be empty
 */
record ReviewMark(String by, String at, String note) {

    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);

    static ReviewMark of(TestReview review) {
        return new ReviewMark(review.reviewedBy(), WHEN.format(review.reviewedAt()), review.note());
    }
}
