/**
 * The way to the SQLite file: opening it, one write at a time, each press once, reading rows into
 * records, and the database's own refusals in a form that a message can be made from.
 */
package club.ascham.store;
