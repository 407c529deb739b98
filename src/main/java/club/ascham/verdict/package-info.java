/**
 * What a bow that came back tells, and what to do about it: readings and signs in, a verdict with
 * its steps out. It knows no web, no database and no clock; the verdict may only restrict, a person
 * releases. Others call {@link club.ascham.verdict.Judge}.
 *
 * <p>What is decided is data: the judge answers in remarks (a {@link club.ascham.verdict.Saying}
 * and what it is said of), each is kept as a row of {@code verdict_line} with its step, and {@code
 * Saying} alone puts them into words, when they are shown. So the words of a saying may change
 * without touching the past; its name and what it leaves open may not, or older rows can't be read.
 * Who asks what a check advised asks {@code verdict_line.step}, and no words. What came as prose
 * (an older check, a file, another room's sentence) is <em>as said</em>; so is still what the
 * mechanics rest on.
 */
package club.ascham.verdict;
