package plantair.offer;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.Intake;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Entered;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Power;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;
import plantair.register.FactLines;
import plantair.register.Facts;
import plantair.supply.Offer;

/**
 * What the register says of an offer, as its data sheet states it.
 *
 * @param label whose offer, and of what; once only at a site
 * @param offeredOn day of the offer; null when it is not known
 * @param flow stated flow
 * @param basis what that flow refers to
 * @param pressure discharge pressure at which flow and power are stated, gauge
 * @param power electric input power at that point
 * @param station pressure of the intake for which they are stated, absolute
 * @param temperature of that intake
 * @param humidity of that intake
 * @param price in the currency of the site; null when it is not known
 * @param note free text, may be empty
 * @param open false once the offer is withdrawn or lost
 */
@Embeddable
public record OfferFacts(
        String label,
        @Nullable LocalDate offeredOn,
        Entered flow,
        @Enumerated(EnumType.STRING) FlowBasis basis,
        Entered pressure,
        Entered power,
        Entered station,
        Entered temperature,
        Entered humidity,
        @Nullable Entered price,
        String note,
        boolean open)
        implements Facts {

    /** The offer as it can be reckoned with. */
    public Offer offer() {
        return new Offer(label, FlowRate.of(flow), basis, intake(), GaugePressure.of(pressure), Power.of(power));
    }

    private Intake intake() {
        return new Intake(AbsolutePressure.of(station), Temperature.of(temperature), RelativeHumidity.of(humidity));
    }

    /** The price, where it is known. */
    public Optional<Entered> priced() {
        return Optional.ofNullable(price);
    }

    @Override
    public String name() {
        return label;
    }

    @Override
    public String lines() {
        return new FactLines()
                .add("label", label)
                .add("offered on", offeredOn)
                .add("flow", flow)
                .add("basis", basis)
                .add("pressure", pressure)
                .add("input power", power)
                .add("intake pressure", station)
                .add("intake temperature", temperature)
                .add("intake humidity", humidity)
                .add("price", price)
                .add("open", open)
                .add("note", note)
                .toString();
    }
}
