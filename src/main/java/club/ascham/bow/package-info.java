/**
 * The trade's rules about one bow: which parts fit, how long it is, what it should measure, what it
 * weighs on the fingers, and how it is set up. Plain functions on records; knows no web, no
 * database and no clock.
 *
 * <p>{@link club.ascham.bow.FingerWeight} is the only place that says what a rig weighs: newcomers,
 * slips, the bench, the rig's page and the API ask it.
 *
 * <p>A length above the table is acceptable, one far below it is not, and the ranking says why
 * beside each. Common practice: a long bow is easy on a short draw, a short one is overdrawn.
 */
package club.ascham.bow;
