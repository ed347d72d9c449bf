package planted.quantity;

/** A pure class whose text hangs on the locale of the machine. */
public class FormatsByDefault {

    String text(double number) {
        return String.format("%f", number);
    }
}
