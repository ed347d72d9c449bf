package planted.quantity;

import java.text.DecimalFormat;

/** A pure class that formats text. */
public class KnowsText {

    DecimalFormat format = new DecimalFormat();
}
