package plantair.site;

import jakarta.persistence.Embeddable;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Entered;
import plantair.quantity.Length;
import plantair.register.FactLines;
import plantair.register.Facts;

/**
 * What the register says of a site.
 *
 * @param name how people call it
 * @param zone id of its time zone
 * @param elevation above sea level; null when the normal barometer is given instead
 * @param barometer normal station pressure; null when the elevation is given instead
 * @param currency ISO 4217 code of the money that is paid in; null when not given
 * @param tariff money for a kilowatt hour; null when not given
 * @param note free text, may be empty
 */
@Embeddable
public record SiteFacts(
        String name,
        String zone,
        @Nullable Entered elevation,
        @Nullable Entered barometer,
        @Nullable String currency,
        @Nullable Entered tariff,
        String note)
        implements Facts {

    /** A site whose costs nobody asks for. */
    public SiteFacts(String name, String zone, @Nullable Entered elevation, @Nullable Entered barometer, String note) {
        this(name, zone, elevation, barometer, null, null, note);
    }

    /** The time zone. */
    public ZoneId zoneId() {
        return ZoneId.of(zone);
    }

    /** The elevation as a quantity. */
    public Optional<Length> height() {
        return Optional.ofNullable(elevation).map(Length::of);
    }

    /** The normal station pressure as a quantity. */
    public Optional<AbsolutePressure> normalBarometer() {
        return Optional.ofNullable(barometer).map(AbsolutePressure::of);
    }

    @Override
    public String lines() {
        return new FactLines()
                .add("name", name)
                .add("zone", zone)
                .add("elevation", elevation)
                .add("normal barometer", barometer)
                .add("currency", currency)
                .add("tariff", tariff)
                .add("note", note)
                .toString();
    }
}
