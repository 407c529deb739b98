/**
 * Opens the data folder before the first request: folder, migrations, first accounts, demo club.
 */
package club.ascham.start;
