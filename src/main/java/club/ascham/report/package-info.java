/**
 * What people tell of a bow: facts that stay open, and stand against it, until a person answers
 * them at a check or an inspection. Others read what is open through {@link
 * club.ascham.concern.Concerns}.
 *
 * <p>Every door reads what is told by one parser ({@link club.ascham.report.Telling}) into one use
 * case ({@link club.ascham.report.TellReport}): receiving, a session's return, a loan, a bow or an
 * item, a check. Signs decide whether it is dangerous, own words only make us ask once. It stands
 * against the named part, or against each part that the bow had then.
 *
 * <p>With anything unanswered no verdict is <em>fit</em>, and the database refuses the bow's
 * release. A receipt's or a check's own ticks stay as facts. A correction repeats nothing, and what
 * is answered stays answered.
 *
 * <p>The slower of two hands loses nothing: what it tells of a bow that came back meanwhile is a
 * report, and its answer to what was answered meanwhile is shown as not kept.
 */
package club.ascham.report;
