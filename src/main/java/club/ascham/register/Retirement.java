package club.ascham.register;

import java.time.LocalDate;

/**
 * An item's leaving the club.
 *
 * @param note null: none
 */
public record Retirement(LocalDate on, RetiredWhy why, String note) {}
