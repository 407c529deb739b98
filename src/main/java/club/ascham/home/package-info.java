/** The first page, and what the code box finds. Both read and send on; neither changes anything. */
package club.ascham.home;
