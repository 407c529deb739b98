/** An evening's lending: a set of rigs to a leader until tonight, and back in one list. */
package club.ascham.session;
