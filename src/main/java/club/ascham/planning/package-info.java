/**
 * The plan of the next 24 months as people meet it: reads the fleet and the club's rules, has
 * {@link club.ascham.plan} reckon in the background, and shows it with its what-ifs. Others may ask
 * {@link club.ascham.planning.PlanBrief} for the plan as things stand.
 */
package club.ascham.planning;
