/**
 * Tells whether a bow is really changing, or its readers merely differ: reads what was measured
 * since the bow was last adjusted, and asks {@link club.ascham.statistics.Drift}.
 *
 * <p>What it asks for is upkeep that waits beside the plan; it blocks only where a limb may be
 * changing and no bolt sets the tiller. What is then looked at and found fine begins the readings
 * anew, or the same fall would be reported for ever.
 */
package club.ascham.drift;
