/**
 * Issuing a kit: who gets which rig with what beside it.
 *
 * <p>The issue lays out the first rig that suits with the rest of the form, so that most kits need
 * no press to choose: the ranked list stands above it, and the rig counts as chosen only when it is
 * issued.
 */
package club.ascham.issue;
