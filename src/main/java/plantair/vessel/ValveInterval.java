package plantair.vessel;

/**
 * Within which a site wants the relief valves of a receiver tested.
 *
 * @param receiverId the receiver
 * @param months more than zero
 * @param authority that the site names, may be empty
 */
public record ValveInterval(long receiverId, int months, String authority) {}
