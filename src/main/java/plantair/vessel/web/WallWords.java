package plantair.vessel.web;

import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.quantity.Rounded;
import plantair.vessel.web.VesselPage.Life;
import plantair.wall.RemainingLife;
import plantair.wall.WallCode;
import plantair.wall.WallLoss;
import plantair.wall.WallPlace;
import plantair.web.Choices;
import plantair.web.Status;
import plantair.web.Status.Kind;
import plantair.web.UnitSet;

/** Figures of a wall in words and a person's unit, no sharper than they are known. */
@Component
final class WallWords {

    private static final int RATE_DIGITS = 2;

    private final Choices choices;

    WallWords(Choices choices) {
        this.choices = choices;
    }

    VesselPage.Place place(Map.Entry<String, WallPlace> named, UnitSet units) {
        WallPlace place = named.getValue();
        return new VesselPage.Place(
                named.getKey(),
                thickness(place.last().thickness(), units),
                place.last().day(),
                place.required() == null ? null : thickness(place.required(), units),
                state(place),
                place.code() == WallCode.THINNING ? rate(place.loss().orElseThrow(), units.bore()) : null,
                place.life().map(WallWords::life).orElse(null));
    }

    private Status state(WallPlace place) {
        if (place.isBelowRequired()) {
            return new Status(Kind.ALARM, choices.label("wall.state", Below.BELOW_REQUIRED));
        }
        Kind kind = switch (place.code()) {
            case THINNING, THICKER -> Kind.WATCH;
            case NO_LOSS_TOLD -> Kind.GOOD;
            case ONE_READING -> Kind.NONE;
        };
        return new Status(kind, choices.label("wall.state", place.code()));
    }

    /** The one state that two readings do not make. */
    private enum Below {
        BELOW_REQUIRED
    }

    static String thickness(@Nullable Length thickness, UnitSet units) {
        return thickness == null
                ? ""
                : Rounded.places(thickness.in(units.bore()), units.bore() == LengthUnit.INCH ? 3 : 2) + " "
                        + units.bore().symbol();
    }

    private static String rate(WallLoss loss, LengthUnit unit) {
        double rate = new Length(loss.rate()).in(unit);
        OptionalDouble u = loss.uRate();
        String number = u.isPresent() && u.getAsDouble() > 0
                ? plusMinus(rate, new Length(u.getAsDouble()).in(unit))
                : Rounded.significant(rate, RATE_DIGITS);
        return number + " " + unit.symbol();
    }

    /** What is left; without a known error of the instrument to the digits that a hand calculation gives. */
    static Life life(RemainingLife life) {
        double u = life.u().orElse(0);
        if (u > 0) {
            String half = plusMinus(life.half(), u / 2);
            return new Life(
                    plusMinus(life.years(), u),
                    half,
                    life.longestInterval() < life.half() ? Rounded.places(life.longestInterval(), 0) : half);
        }
        return new Life(
                Rounded.places(life.years(), 1),
                Rounded.places(life.half(), 2),
                Rounded.places(life.longestInterval(), 2));
    }

    private static String plusMinus(double value, double u) {
        return Rounded.toUncertainty(value, u) + " ± " + Rounded.toUncertainty(u, u);
    }
}
