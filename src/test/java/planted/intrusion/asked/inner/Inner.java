package planted.intrusion.asked.inner;

/** Private to its module. */
public class Inner {}
