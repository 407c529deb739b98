package club.ascham.verdict;

/**
 * What was done at the bench between two readings.
 *
 * @param twists put in (positive) or taken out (negative); null: some, not counted, or none
 * @param bolts {@link Turns#NONE} when no bolt was turned
 * @param before what the bow measured before
 */
public record WorkDone(Integer twists, Turns bolts, Reading before) {}
