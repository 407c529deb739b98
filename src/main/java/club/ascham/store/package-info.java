/**
 * The way to the SQLite file: opening it, one write at a time, each press once, reading rows into
 * records, and the database's own refusals in a form that a message can be made from.
 *
 * <p>A club has one server, hence one file and one writer. Transactions begin IMMEDIATE, because
 * one that reads first and writes later fails with BUSY otherwise; so pages that only read run
 * outside any transaction. {@code synchronous=FULL}: a save that was acknowledged survives a killed
 * process.
 *
 * <p>Reads go by SQL into records, writes by entities or facts: what a page shows of joined rows
 * costs several times as much through Hibernate. What has a life of its own (items, rigs, set-ups,
 * loans, checks, withdrawals, rules, accounts) is a Panache entity with guarded transitions; plain
 * dated facts (lines, fittings, signs, records) are inserted as rows.
 *
 * <p>Tables are STRICT, days and moments are ISO text that no time zone can shift, lengths and
 * money are whole numbers.
 *
 * <p>Never open the club's file with Java's own file classes while it is open: closing such a
 * channel gives up every lock that SQLite holds on it in this process.
 */
package club.ascham.store;
