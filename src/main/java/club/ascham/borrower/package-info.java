/**
 * Who borrows: kept as long as the club keeps names, then a number. Names of borrowers are never in
 * the story, in addresses that we make or in the API's lists.
 */
package club.ascham.borrower;
