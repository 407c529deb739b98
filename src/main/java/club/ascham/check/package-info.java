/**
 * What a bow that came back tells, and what to do about it: readings and signs in, a verdict with
 * its steps out. The records and {@link club.ascham.check.Judge} know no web, no database and no
 * clock; the verdict may only restrict, a person releases.
 */
package club.ascham.check;
