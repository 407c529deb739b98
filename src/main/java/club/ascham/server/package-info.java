/**
 * What is wrong with the server and not with a bow, told to officers on the first page, in the log
 * and at the health address before anyone asks. Others hand in what they know; nothing here mends
 * anything.
 *
 * <p>The log goes to standard output, with day and time: starts, that a name or a password was
 * wrong or had to wait, each failure with its trace, and in one line that a sender hung up in the
 * middle. It holds no names and no addresses of callers; who did what stands in the record.
 */
package club.ascham.server;
