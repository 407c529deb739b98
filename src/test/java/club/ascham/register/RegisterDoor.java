package club.ascham.register;

import club.ascham.Settings;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.ItemId;
import club.ascham.time.ClubTime;
import club.ascham.units.LengthUnit;
import jakarta.inject.Singleton;
import java.util.Currency;
import java.util.Map;

/** Registers things by what its form asks. */
@Singleton
public class RegisterDoor {
  private final AddItem addItem;
  private final ClubTime time;
  private final Currency currency;

  RegisterDoor(AddItem addItem, ClubTime time, Settings settings) {
    this.addItem = addItem;
    this.time = time;
    this.currency = Currency.getInstance(settings.currency());
  }

  public Outcome<ItemId> add(ItemKind kind, Map<String, String> form) {
    Typed typed = Typed.of(form);
    return ItemReader.read(
            kind, typed, new ItemReader.Setting(LengthUnit.MILLIMETRE, currency, time.today()))
        .map(details -> addItem.add(details, 1))
        .orElseThrow(() -> new IllegalArgumentException(typed.faults().toString()));
  }
}
