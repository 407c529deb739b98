package club.ascham.bow;

/**
 * What a bow scale showed on a bow with these limbs.
 *
 * @param drawIn AMO draw
 * @param forceLb on the scale
 * @param riserIn of the riser that the limbs sat on; null: a one-piece bow
 */
public record ScaleReading(double drawIn, double forceLb, Integer riserIn) {}
