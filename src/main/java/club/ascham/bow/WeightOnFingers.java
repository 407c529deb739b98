package club.ascham.bow;

/**
 * The force at one archer's full draw, estimated.
 *
 * @param lb the likeliest value in lbf
 * @param lowLb the least it may well be
 * @param highLb the most it may well be
 * @param readings of the bow scale that it rests on beside the mark
 * @param basis what the estimate rests on, in words
 */
public record WeightOnFingers(double lb, double lowLb, double highLb, int readings, String basis) {}
