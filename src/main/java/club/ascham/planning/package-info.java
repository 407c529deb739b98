/**
 * The plan of the next 24 months as people meet it: reads the fleet and the club's rules, has
 * {@link club.ascham.plan} reckon in the background, and shows it with its what-ifs. Others may ask
 * {@link club.ascham.planning.PlanBrief} for the plan as things stand.
 *
 * <p>It reckons one plan at a time. A page waits for a second and a half, then says how far it is
 * and asks again by itself, without a script; anyone who may see it may stop it. {@link
 * club.ascham.planning.Lives} alone says how long a part lasts: what {@code life} tells of its kind
 * from the club's own record, else assumptions, marked as such.
 */
package club.ascham.planning;
