package planted.quantity;

/** A function whose last digit hangs on the machine. */
public class PlatformMath {

    double power(double x) {
        return Math.pow(x, 1.4);
    }
}
