/**
 * How the club's rigs stand, for a committee that must not have to click: figures, and behind each
 * figure the rows it counts. Others may read the rigs, the loans and the work that fall due here.
 *
 * <p>A bow that is out and not set up stands both on loan and in the workshop.
 */
package club.ascham.fleet;
