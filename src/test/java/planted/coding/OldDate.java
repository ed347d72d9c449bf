package planted.coding;

import java.util.Date;

/** The old date class. */
public class OldDate {

    Date date = new Date(0);
}
