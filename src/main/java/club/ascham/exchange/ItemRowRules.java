package club.ascham.exchange;

import club.ascham.Settings;
import club.ascham.form.Typed;
import club.ascham.register.ItemKind;
import club.ascham.register.ItemReader;
import club.ascham.time.ClubTime;
import club.ascham.units.LengthUnit;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.Currency;

/** Holds the rows of an imported file to the rules that the register's forms hold people to. */
@ApplicationScoped
class ItemRowRules {
  private final ClubTime time;
  private final Currency currency;

  ItemRowRules(ClubTime time, Settings settings) {
    this.time = time;
    this.currency = Currency.getInstance(settings.currency());
  }

  @Produces
  @Singleton
  RowRules risers() {
    return rules("risers", ItemKind.RISER);
  }

  @Produces
  @Singleton
  RowRules limbs() {
    return rules("limbs", ItemKind.LIMBS);
  }

  @Produces
  @Singleton
  RowRules bows() {
    return rules("bows", ItemKind.BOW);
  }

  @Produces
  @Singleton
  RowRules strings() {
    return rules("strings", ItemKind.STRING);
  }

  @Produces
  @Singleton
  RowRules stringers() {
    return rules("stringers", ItemKind.STRINGER);
  }

  @Produces
  @Singleton
  RowRules kitItems() {
    return rules("kit-items", null);
  }

  private RowRules rules(String list, ItemKind onlyKind) {
    return new RowRules() {
      @Override
      public String list() {
        return list;
      }

      @Override
      public void check(Typed row) {
        ItemKind kind = onlyKind == null ? row.word("kind", ItemKind.class) : onlyKind;
        if (kind != null) {
          ItemReader.read(
              kind, row, new ItemReader.Setting(LengthUnit.MILLIMETRE, currency, time.today()));
        }
      }
    };
  }
}
