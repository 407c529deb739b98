/**
 * What every page shares: the frame around it, a press and its outcome as a page or as JSON, going
 * on after a save, refusals as pages or as problem details, and the headers that keep a page to
 * itself.
 */
package club.ascham.web;
