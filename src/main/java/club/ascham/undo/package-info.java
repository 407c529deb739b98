/**
 * What was pressed too early: each press that moves things is kept as a move, and undone as a
 * correction told in the record. Rooms keep their moves by {@code Moves}, and show what may be
 * undone by {@code MayBeUndone}.
 */
package club.ascham.undo;
