package club.ascham.form;

/** One of the choices of a field. */
public record Option(String value, String label) {}
