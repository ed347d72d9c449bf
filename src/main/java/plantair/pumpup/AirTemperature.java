package plantair.pumpup;

/** How the temperature of the receiver air came into a result; the largest error of a pump-up test. */
public enum AirTemperature {
    /** Air temperature read at start and stop of every run (M7). */
    MEASURED,
    /** Pressure and temperature read again after the air has settled (M8). */
    SETTLED,
    /** Not measured; a factor from the lumped model stands in (M9). */
    NOT_MEASURED
}
