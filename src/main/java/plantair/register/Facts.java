package plantair.register;

/** What a register says of one thing; replaced as a whole when it changes. */
public interface Facts {

    /** How people call the thing. */
    String name();

    /** One fact a line, {@code name: value}, for the change log. */
    String lines();
}
