/**
 * Doing one piece of work: the sheet of an inspection or a string's replacement, who may sign it,
 * and the record that is kept. What is due when belongs to {@code upkeep}.
 */
package club.ascham.worksheet;
