/**
 * The one place where the time comes from; everything else is handed it.
 *
 * <p>A clock that was set back refuses nothing: what ends is never before what it ends, the
 * record's order is that of its numbers, and officers are told.
 */
package club.ascham.time;
