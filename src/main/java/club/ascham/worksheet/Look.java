package club.ascham.worksheet;

/**
 * One thing to look at in an inspection.
 *
 * @param key its name in forms and JSON
 * @param part what to look at
 * @param sound what it is like when it is as it should be
 * @param source where the look is published, or that it is common practice
 */
public record Look(String key, String part, String sound, String source) {}
