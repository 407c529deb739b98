/**
 * Lending: who has what until when, from the issue of a kit to its return. Others read open loans
 * through {@link club.ascham.loan.Loans}; names of borrowers are for those who hand out and take
 * back, so the committee sees how many and which things, not who.
 *
 * <p>The issue lays out the first rig that suits with the rest of the form, so that most kits need
 * no press to choose: the ranked list stands above it, and the rig counts as chosen only when it is
 * issued.
 */
package club.ascham.loan;
