/**
 * How long the club's own parts last, and what its rules might take from that. {@link
 * club.ascham.life.PartLives} reads the histories, {@link club.ascham.statistics} says what they
 * carry, {@link club.ascham.life.Proposal} what a rule could become. An officer takes it over; it
 * only ever shortens.
 *
 * <p>A part failed when it was withdrawn or failed an inspection, never went out again, and was
 * scrapped. Nobody is asked for a cause: the record knows it. Lost, sold, and scrapped in time end
 * the watch and nothing more. Loans and shots before the record began are not known, so such a part
 * tells only of days.
 *
 * <p>What a failure costs is one number, in prices of a part replaced in time: an evening and a
 * limb have no price list.
 */
package club.ascham.life;
