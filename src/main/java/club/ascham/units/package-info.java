/**
 * Lengths, money and item codes: what they are, how people write them, and how they are shown.
 * Every feature reads and shows them through this package, so that a page, the API and a CSV file
 * agree; it knows nothing of any of those.
 */
package club.ascham.units;
