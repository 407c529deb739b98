package club.ascham.form;

/**
 * What is wrong with one field.
 *
 * @param message what is wrong and what to do, for the person who typed it
 * @param suggestion what was probably meant, offered as a button; null: nothing to offer
 */
public record Fault(String message, String suggestion) {}
