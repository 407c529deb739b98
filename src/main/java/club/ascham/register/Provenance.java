package club.ascham.register;

import club.ascham.units.Money;
import java.time.LocalDate;

/**
 * Where an item came from and how its like are recognised, for a recall as well. Each may be null:
 * not known.
 */
public record Provenance(
    String maker,
    String model,
    String batch,
    String serial,
    LocalDate boughtOn,
    Money price,
    String notes) {}
