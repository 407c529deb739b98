/**
 * What every page shares: the frame around it, going on after a save, refusals as pages or as
 * problem details, and the headers that keep a page to itself.
 */
package club.ascham.web;
