/**
 * Lengths, money and item codes: what they are, how people write them, and how they are shown.
 * Every feature reads and shows them through this package, so that a page, the API and a CSV file
 * agree; it knows nothing of any of those.
 *
 * <p>Lengths are hundred-thousandths of a millimetre, so that 1/32 in and 0.1 mm are both exact;
 * money is minor units. Readings are kept as typed beside their exact value; a likely slip of unit
 * (8.75 as mm, 222 as inches) is asked back with the likely reading as a button, and never kept
 * unasked. An item's code ends in a check character, so that a mistyped label never opens another
 * bow.
 */
package club.ascham.units;
