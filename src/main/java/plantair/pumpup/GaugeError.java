package plantair.pumpup;

import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;

/**
 * What a certificate says of a gauge at one point.
 *
 * @param reading what the gauge shows
 * @param error reading less true pressure; above zero when it reads high
 */
public record GaugeError(GaugePressure reading, PressureDifference error) {}
