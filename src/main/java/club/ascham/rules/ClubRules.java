package club.ascham.rules;

/**
 * The club's own settings, as edited on the rules page.
 *
 * @param braceTable the name of the table of brace bands in force
 * @param fullCheckEveryLooks sessions after which a look no longer suffices
 * @param sessionsAWeek with {@code shotsASession}, what shots are estimated from
 */
public record ClubRules(
    String name,
    boolean demo,
    String braceTable,
    int fullCheckEveryLooks,
    int loanDays,
    long depositMinor,
    double sessionsAWeek,
    int shotsASession,
    int version) {}
