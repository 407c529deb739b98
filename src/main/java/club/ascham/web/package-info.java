/**
 * What every page shares: the frame around it, a press and its outcome as a page or as JSON, going
 * on after a save, refusals as pages or as problem details, and the headers that keep a page to
 * itself.
 *
 * <p>Only forms change anything through pages, and the API takes no cookie. The token of a form
 * lives as long as the longest session.
 *
 * <p>Of a large page's time most is the template's. So a tag opens no scope of its own and has few
 * optional parameters, since a name that Qute does not find at once it asks of every resolver,
 * scope by scope; a list is one tag over records that are ready to show, not a tag a line; and what
 * is shorter in HTML is no tag. What every row does is done on characters and in loops, or once;
 * elsewhere a stream or a pattern reads better and costs nothing.
 */
package club.ascham.web;
