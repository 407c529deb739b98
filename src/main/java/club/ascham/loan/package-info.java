/**
 * What is lent: loans and their lines, what may stand in the way of lending a thing, the slip.
 * {@link club.ascham.issue} hands kits out, {@link club.ascham.changes} changes what is out. Others
 * read open loans through {@link club.ascham.loan.Loans}; names of borrowers are for those who hand
 * out and take back, so the committee sees how many and which things, not who.
 */
package club.ascham.loan;
