package club.ascham.time;

import java.time.LocalDate;

/**
 * Told once a day, in the club's night or when the server is next awake: whoever has work that
 * waits for nobody does it then.
 */
public record NightlyRound(LocalDate day) {}
