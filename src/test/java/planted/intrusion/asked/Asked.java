package planted.intrusion.asked;

/** The public face of a module. */
public class Asked {}
