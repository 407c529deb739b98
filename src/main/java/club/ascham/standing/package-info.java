/** The state of every rig and item at any date, derived from facts and never typed in. */
package club.ascham.standing;
