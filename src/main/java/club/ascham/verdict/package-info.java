/**
 * What a bow that came back tells, and what to do about it: readings and signs in, a verdict with
 * its steps out. It knows no web, no database and no clock; the verdict may only restrict, a person
 * releases. Others call {@link club.ascham.verdict.Judge}.
 */
package club.ascham.verdict;
