package club.ascham.web;

import club.ascham.id.Made;
import club.ascham.units.CodeParse;
import club.ascham.units.ItemCode;
import jakarta.ws.rs.ext.ParamConverter;
import jakarta.ws.rs.ext.ParamConverterProvider;
import jakarta.ws.rs.ext.Provider;
import java.lang.annotation.Annotation;
import java.lang.reflect.Constructor;
import java.lang.reflect.Type;

/**
 * Reads what stands in an address: the number of a thing, and the code of an item, of a single limb
 * its pair's. What can be neither names nothing here.
 */
@Provider
public class InAddresses implements ParamConverterProvider {
  @Override
  @SuppressWarnings("unchecked")
  public <T> ParamConverter<T> getConverter(
      Class<T> type, Type genericType, Annotation[] annotations) {
    if (type == ItemCode.class) {
      return (ParamConverter<T>) new OfItem();
    }
    return Made.class.isAssignableFrom(type) ? new Numbered<>(type) : null;
  }

  private static final class OfItem implements ParamConverter<ItemCode> {
    @Override
    public ItemCode fromString(String text) {
      CodeParse parse = ItemCode.parse(text);
      if (parse instanceof CodeParse.OfItem found) {
        return found.item();
      }
      throw new NoSuchThing(((CodeParse.OfNone) parse).message());
    }

    @Override
    public String toString(ItemCode code) {
      return code.display();
    }
  }

  private static final class Numbered<T> implements ParamConverter<T> {
    private final Constructor<T> of;

    Numbered(Class<T> type) {
      try {
        of = type.getDeclaredConstructor(long.class);
      } catch (NoSuchMethodException impossible) {
        throw new IllegalStateException(impossible);
      }
    }

    @Override
    public T fromString(String text) {
      try {
        return of.newInstance(Long.parseLong(text));
      } catch (NumberFormatException none) {
        throw new NoSuchThing("There is nothing numbered " + text + " here.");
      } catch (ReflectiveOperationException impossible) {
        throw new IllegalStateException(impossible);
      }
    }

    @Override
    public String toString(T thing) {
      return Long.toString(((Made) thing).value());
    }
  }
}
