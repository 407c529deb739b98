package club.ascham.bow;

/**
 * What one quantity of one rig should measure.
 *
 * @param inner the band to aim for; null where nothing published or entered speaks
 * @param outer beyond it something is wrong; null where nothing speaks and no set-up figure exists
 * @param basis what the bands rest on, in words for the person at the bench, with its source
 */
public record Target(Band inner, Band outer, String basis) {}
