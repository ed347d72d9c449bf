package plantair.equipment;

/**
 * Why a receiver must not be pumped up.
 *
 * @param hazard what it is
 * @param reason in words, with the figures
 * @param act what to do about it, in words
 */
public record VesselStop(VesselHazard hazard, String reason, String act) {}
