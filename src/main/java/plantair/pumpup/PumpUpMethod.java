package plantair.pumpup;

/** A frozen way from readings to a result. A method is never edited once it is released; a better one is added. */
public interface PumpUpMethod {

    /** Its name in records and exports, as {@code PU-1}. */
    String version();

    /** The result of one test. Same readings, same digits, on every machine. */
    PumpUpResult evaluate(PumpUpReadings readings);
}
