package plantair.leaktest;

import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;

/**
 * One cycle of a compressor, as typed.
 *
 * @param loaded time compressing
 * @param unloaded time turning without compressing; null when there was none
 * @param standing time off; null when there was none
 */
@Embeddable
public record CycleEntry(
        Entered loaded,
        @Nullable Entered unloaded,
        @Nullable Entered standing) {}
