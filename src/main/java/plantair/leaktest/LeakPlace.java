package plantair.leaktest;

/** What was shut while a leak was measured. */
public enum LeakPlace {
    /** All of the air system of a site. */
    WHOLE_SYSTEM,
    /** A part of it. */
    PART_OF_SYSTEM,
    /** The volume in which a compressor is tested, between its check valve and a shut valve. */
    TEST_VOLUME,
    /** The same, when the air is known to go back through the check valve of the machine. */
    CHECK_VALVE;

    /** Whether it is the leak of one machine's test volume. */
    public boolean isOfMachine() {
        return this == TEST_VOLUME || this == CHECK_VALVE;
    }
}
