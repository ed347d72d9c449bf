package plantair.vessel;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import plantair.quantity.Entered;

/**
 * One reading of the wall, as typed.
 *
 * @param place how the plant calls the place; the same name at every inspection
 * @param part what it is on
 * @param thickness of the wall
 */
@Embeddable
public record WallEntry(
        String place, @Enumerated(EnumType.STRING) WallPart part, Entered thickness) {}
