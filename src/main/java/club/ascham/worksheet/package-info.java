/**
 * Doing one piece of work: the sheet of an inspection or a string's replacement, who may sign it,
 * and the record that is kept. What is due when belongs to {@code upkeep}.
 *
 * <p>An inspection may be typed in that lies before one that is known, but not before the club had
 * the item.
 */
package club.ascham.worksheet;
