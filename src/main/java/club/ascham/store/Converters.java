package club.ascham.store;

import club.ascham.units.Length;
import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.time.Instant;
import java.time.LocalDate;

/** How Hibernate writes what the file keeps as text or whole numbers. */
final class Converters {
  private Converters() {}

  @Converter(autoApply = true)
  static class Days implements AttributeConverter<LocalDate, String> {
    @Override
    public String convertToDatabaseColumn(LocalDate day) {
      return day == null ? null : Stored.day(day);
    }

    @Override
    public LocalDate convertToEntityAttribute(String text) {
      return text == null ? null : Stored.day(text);
    }
  }

  @Converter(autoApply = true)
  static class Moments implements AttributeConverter<Instant, String> {
    @Override
    public String convertToDatabaseColumn(Instant moment) {
      return moment == null ? null : Stored.moment(moment);
    }

    @Override
    public Instant convertToEntityAttribute(String text) {
      return text == null ? null : Stored.moment(text);
    }
  }

  @Converter(autoApply = true)
  static class Lengths implements AttributeConverter<Length, Long> {
    @Override
    public Long convertToDatabaseColumn(Length length) {
      return length == null ? null : length.units();
    }

    @Override
    public Length convertToEntityAttribute(Long units) {
      return units == null ? null : new Length(units);
    }
  }
}
