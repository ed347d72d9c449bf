package plantair.equipment;

import plantair.web.UnitSet;

/** What another module has to say on the page of a receiver. */
public interface ReceiverPagePart {

    /** Name under which the page finds it. */
    String attribute();

    /** What is said of a receiver, ready for the page. */
    Object of(Receiver receiver, UnitSet units);
}
