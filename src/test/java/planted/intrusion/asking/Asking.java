package planted.intrusion.asking;

import planted.intrusion.asked.inner.Inner;

/** Reaches into another module. */
public class Asking {

    Inner inner = new Inner();
}
