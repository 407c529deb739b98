/**
 * Lending: who has what until when, from the issue of a kit to its return. Others read open loans
 * through {@link club.ascham.loan.Loans}; names of borrowers are for those who hand out and take
 * back, so the committee sees how many and which things, not who.
 */
package club.ascham.loan;
