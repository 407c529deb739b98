/** What is measured, counted or turned of a bow, each told once. */
package club.ascham.measured;
