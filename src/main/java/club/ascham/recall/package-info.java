/** What a maker calls back: which items, where they are and were, withdrawn in one press. */
package club.ascham.recall;
