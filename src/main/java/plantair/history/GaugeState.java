package plantair.history;

import plantair.instrument.InstrumentKind;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.PumpUpTest;

/** What a test's own copy says of its gauge. */
enum GaugeState {
    /** Named, and not past its date. */
    NAMED,
    /** Past its date or out of order on the day of the test. */
    PAST_ITS_DATE,
    /** Not named in the test. */
    NOT_NAMED;

    static GaugeState of(PumpUpTest test) {
        return test.instruments().stream()
                .filter(copy -> copy.kind() == InstrumentKind.GAUGE)
                .findFirst()
                .map(InstrumentCopy::isPastItsDate)
                .map(past -> past ? PAST_ITS_DATE : NAMED)
                .orElse(NOT_NAMED);
    }
}
