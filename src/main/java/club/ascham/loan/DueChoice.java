package club.ascham.loan;

/**
 * One way to say until when, ready to be picked.
 *
 * @param value so many weeks; empty: as long as the club usually lends
 * @param hint the day it comes to
 */
public record DueChoice(String value, String label, String hint) {}
