/**
 * The trade's rules about one bow: which parts fit, how long it is, what it should measure, what it
 * weighs on the fingers, and how it is set up. Plain functions on records; knows no web, no
 * database and no clock.
 */
package club.ascham.bow;
