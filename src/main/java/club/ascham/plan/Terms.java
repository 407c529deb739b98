package club.ascham.plan;

/**
 * What a new part of one kind costs and takes.
 *
 * @param priceMinor of one, in minor units of the club's money
 * @param leadDays from order to the kit room
 * @param minutes to put it in the place of one that failed, set-up included
 */
public record Terms(long priceMinor, int leadDays, int minutes) {}
