/**
 * An evening's lending: a set of rigs to a leader until tonight, and back in one list.
 *
 * <p>What went beside the bows is taken back line by line, as a receipt does it. What became of
 * each bow is read and not kept ({@link club.ascham.session.Became}).
 */
package club.ascham.session;
