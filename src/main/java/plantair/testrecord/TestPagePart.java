package plantair.testrecord;

import plantair.web.UnitSet;

/** What another module has to say on the page of a test. */
public interface TestPagePart {

    /** Name under which the page finds it. */
    String attribute();

    /** What is said of a test, ready for the page in a person's units. */
    Object of(PumpUpTest test, UnitSet units);
}
