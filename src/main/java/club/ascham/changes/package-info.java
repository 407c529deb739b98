/**
 * A loan while it is out: it goes on, something of it is exchanged, something is lost; its page,
 * where that is done.
 */
package club.ascham.changes;
