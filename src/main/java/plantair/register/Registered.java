package plantair.register;

/** A thing in a register. */
public interface Registered<F extends Facts> {

    /** Its id. */
    long id();

    /** Counts its changes; a change made on an older version is refused. */
    int version();

    /** What the register says of it now. */
    F facts();

    /** Takes new facts; called by {@link Register} only, which writes the change down. */
    void revise(F facts);
}
