package plantair.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** The one place where a number is rounded for print. Dot decimals, no thousands marks, half up. */
public final class Rounded {

    private Rounded() {}

    /**
     * A number to so many significant digits, trailing zeros kept: {@code 21.13}, {@code 0.5000}.
     *
     * @throws IllegalArgumentException when not finite or fewer than one digit
     */
    public static String significant(double value, int digits) {
        Checks.finite(value, "value");
        if (digits < 1) {
            throw new IllegalArgumentException("digits must be at least 1: " + digits);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        int scale = digits - (rounded.precision() - rounded.scale());
        return rounded.setScale(Math.max(scale, 0), RoundingMode.HALF_UP).toPlainString();
    }

    /** A number to so many decimal places. */
    public static String places(double value, int places) {
        Checks.finite(value, "value");
        BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    }

    /**
     * A number no sharper than its uncertainty: to the place of the second significant digit of u. GUM 7.2.6.
     *
     * @param value the number
     * @param u its standard uncertainty in the same unit, above zero
     */
    public static String toUncertainty(double value, double u) {
        return places(value, placesFor(u));
    }

    /** The decimal places that show two significant digits of an uncertainty, none below the unit. */
    public static int placesFor(double u) {
        Checks.positive(u, "u");
        BigDecimal two = new BigDecimal(u).round(new MathContext(2, RoundingMode.HALF_UP));
        return Math.max(0, 2 - (two.precision() - two.scale()));
    }
}
