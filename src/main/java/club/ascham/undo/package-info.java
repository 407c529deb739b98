/**
 * What was pressed too early: each press that moves things is kept as a move, and undone as a
 * correction told in the record. Rooms keep their moves by {@code Moves}, and show what may be
 * undone by {@code MayBeUndone}.
 *
 * <p>An undo is a correction told. A receipt, a session's return, an exchange on a loan and a
 * put-back are undone by page and API alike; the receipt's row, the look and the line that was
 * given out stay as they were pressed. A look that nobody took and a line that never went out are
 * known by the views {@code undone_look} and {@code undone_line}: whatever counts looks or loans
 * leaves them out, and every other room derives what it shows from the lines.
 *
 * <p>An undo is no leaving: the bow was out with all that was known as it came in. Were it refused
 * for that, an unsafe bow that is really out would be missing from what is asked back at once. What
 * blocks <em>since</em> refuses in the concern's own words, and a trigger says so again. Random
 * sequences of all that people do undo, too, and hold what keeps a bow in to what it came in with.
 *
 * <p>Left alone are an exchange of a riser or one-piece bow (the bow goes by it: exchanged back on
 * its own page), a string replaced as upkeep and a corrected record (they have corrections of their
 * own), the reason given for a heavier bow, and presses from before there were moves.
 */
package club.ascham.undo;
