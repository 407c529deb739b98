package club.ascham.web;

import club.ascham.id.AccountId;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.units.ItemCode;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import io.quarkus.jackson.ObjectMapperCustomizer;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.util.function.ToLongFunction;

/** How our small types stand in JSON: ids as numbers, codes as on the label. */
@Singleton
class JsonShapes implements ObjectMapperCustomizer {
  @Override
  public void customize(ObjectMapper mapper) {
    mapper.registerModule(
        new SimpleModule("ascham")
            .addSerializer(new AsNumber<>(ItemId.class, ItemId::value))
            .addSerializer(new AsNumber<>(RigId.class, RigId::value))
            .addSerializer(new AsNumber<>(LoanId.class, LoanId::value))
            .addSerializer(new AsNumber<>(AccountId.class, AccountId::value))
            .addSerializer(new AsLabel()));
  }

  private static final class AsNumber<T> extends StdSerializer<T> {
    private static final long serialVersionUID = 1L;
    private final transient ToLongFunction<T> number;

    AsNumber(Class<T> type, ToLongFunction<T> number) {
      super(type);
      this.number = number;
    }

    @Override
    public void serialize(T id, JsonGenerator json, SerializerProvider all) throws IOException {
      json.writeNumber(number.applyAsLong(id));
    }
  }

  private static final class AsLabel extends StdSerializer<ItemCode> {
    private static final long serialVersionUID = 1L;

    AsLabel() {
      super(ItemCode.class);
    }

    @Override
    public void serialize(ItemCode code, JsonGenerator json, SerializerProvider all)
        throws IOException {
      json.writeString(code.display());
    }
  }
}
