/** The one place where the time comes from; everything else is handed it. */
package club.ascham.time;
