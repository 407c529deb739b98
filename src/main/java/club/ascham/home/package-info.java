/** The first page, and what the code box finds. */
package club.ascham.home;
