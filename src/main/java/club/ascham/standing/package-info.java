/**
 * The state of every rig and item at any date, derived from facts and never typed in.
 *
 * <p>States stand in the views and in {@link club.ascham.standing.Standing}; a property test holds
 * the two together, and both to a model of the bench that knows only what was done.
 */
package club.ascham.standing;
