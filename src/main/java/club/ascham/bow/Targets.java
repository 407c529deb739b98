package club.ascham.bow;

/**
 * What a whole rig should measure.
 *
 * @param brace height, from the point the set-up names
 * @param tiller upper minus lower; signed
 * @param nocking height of the nocking point above square
 */
public record Targets(Target brace, Target tiller, Target nocking) {}
