/**
 * The calculators for a bow in the hand that need not be in the register: they ask the pure
 * mechanics and keep nothing.
 */
package club.ascham.bench;
