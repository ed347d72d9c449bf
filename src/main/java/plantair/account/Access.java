package plantair.account;

/** What an address asks of the person who calls it. */
public enum Access {
    /** Nothing: sign-in itself, files of the layout, health. */
    ANYBODY,
    /** A signed-in account, even while it must change its password first. */
    OWN_PASSWORD,
    /** Reading and exporting, which every account may. */
    READ,
    /** Recording tests and events. */
    RECORD,
    /** Registers, limits, baselines, calibrations and restatements. */
    MANAGE,
    /** Accounts and settings. */
    ADMINISTER,
    /** The token of the settings, which is no person's. */
    METRICS_TOKEN
}
