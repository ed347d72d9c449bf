package plantair.equipment;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import plantair.quantity.Entered;
import plantair.quantity.FlowBasis;

/**
 * One rating point as typed from the plate or the data sheet.
 *
 * @param pressure discharge pressure, gauge
 * @param flow rated flow
 * @param basis what that flow refers to
 */
@Embeddable
public record RatingEntry(
        Entered pressure,
        Entered flow,
        @Enumerated(EnumType.STRING) FlowBasis basis) {}
