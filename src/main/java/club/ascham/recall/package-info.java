/**
 * What a maker calls back: which items, where they are and were, withdrawn in one press.
 *
 * <p>An item has one open withdrawal, so what is out of use already has the recall told of it as a
 * report that counts as dangerous: it stands when the other is released, until the permit holder
 * answers it. What is retired is withdrawn, for the day it is found again.
 */
package club.ascham.recall;
