/**
 * Tells whether a bow is really changing, or its readers merely differ: reads what was measured
 * since the bow was last adjusted, and asks {@link club.ascham.statistics.Drift}.
 */
package club.ascham.drift;
