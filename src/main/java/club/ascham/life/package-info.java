/**
 * How long the club's own parts last, and what its rules might take from that. {@link
 * club.ascham.life.PartLives} reads the histories, {@link club.ascham.statistics} says what they
 * carry, {@link club.ascham.life.Proposal} what a rule could become. An officer takes it over; it
 * only ever shortens.
 */
package club.ascham.life;
