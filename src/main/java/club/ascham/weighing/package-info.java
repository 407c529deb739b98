/**
 * A bow on the bow scale: its readings stay with the limbs, on whatever riser, and limbs that lost
 * weight are looked at.
 */
package club.ascham.weighing;
