package plantair.demand.web;

import org.jspecify.annotations.Nullable;
import plantair.web.Status;

/**
 * A question about the air of a site, answered.
 *
 * @param code which
 * @param question in words
 * @param answer enough, not enough, or cannot be told
 * @param supply capacity less leaks
 * @param need what is to be fed
 * @param margin with its standard uncertainty
 * @param percent margin as a part of the need
 * @param chance how sure that there is enough
 * @param settled what would settle it; null where it is settled
 */
record QuestionRow(
        String code,
        String question,
        Status answer,
        String supply,
        String need,
        String margin,
        String percent,
        String chance,
        @Nullable String settled) {}
