/**
 * What is wrong with the server and not with a bow, told to officers on the first page, in the log
 * and at the health address before anyone asks. Others hand in what they know; nothing here mends
 * anything.
 */
package club.ascham.server;
