/**
 * A cupboard of bows with a memory: what the club owns, who has it, what it measured, and what has
 * to be done before it may leave again. One package a capability; see DEVELOPERS.md for the tour.
 */
package club.ascham;
