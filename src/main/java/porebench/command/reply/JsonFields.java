package porebench.command.reply;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * The fields of one JSON object.
 *
 * <p>Numbers keep full precision; what is absent is {@code null}, and so is a number that is not finite.
 */
public final class JsonFields {
    private final JsonGenerator json;

    private JsonFields(JsonGenerator json) {
        this.json = json;
    }

    /** Returns one whole object and the end of its line, as UTF-8. */
    public static byte[] object(Consumer<JsonFields> fields) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JsonGenerator json = JsonFactory.builder().build().createGenerator(bytes, JsonEncoding.UTF8)) {
            json.enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN);
            json.writeStartObject();
            fields.accept(new JsonFields(json));
            json.writeEndObject();
            json.writeRaw('\n');
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return bytes.toByteArray();
    }

    public void text(String name, String value) {
        write(name, () -> json.writeString(value));
    }

    public void text(String name, Optional<String> value) {
        value.ifPresentOrElse(present -> text(name, present), () -> absent(name));
    }

    public void date(String name, Optional<LocalDate> value) {
        text(name, value.map(LocalDate::toString));
    }

    public void flag(String name, boolean value) {
        write(name, () -> json.writeBoolean(value));
    }

    public void whole(String name, long value) {
        write(name, () -> json.writeNumber(value));
    }

    public void whole(String name, Optional<Integer> value) {
        value.ifPresentOrElse(present -> whole(name, present), () -> absent(name));
    }

    public void number(String name, double value) {
        if (Double.isFinite(value)) {
            write(name, () -> json.writeNumber(value));
        } else {
            absent(name);
        }
    }

    public void number(String name, OptionalDouble value) {
        number(name, value.orElse(Double.NaN));
    }

    public void number(String name, BigDecimal value) {
        write(name, () -> json.writeNumber(value));
    }

    public void number(String name, Optional<BigDecimal> value) {
        value.ifPresentOrElse(present -> number(name, present), () -> absent(name));
    }

    public void absent(String name) {
        write(name, json::writeNull);
    }

    public void texts(String name, List<String> values) {
        write(name, () -> {
            json.writeStartArray();
            for (String value : values) {
                json.writeString(value);
            }
            json.writeEndArray();
        });
    }

    /** Writes numbers in a row, {@code null} for each that is absent. */
    public void numbers(String name, List<OptionalDouble> values) {
        write(name, () -> {
            json.writeStartArray();
            for (OptionalDouble value : values) {
                if (value.isPresent()) {
                    json.writeNumber(value.getAsDouble());
                } else {
                    json.writeNull();
                }
            }
            json.writeEndArray();
        });
    }

    public void group(String name, Consumer<JsonFields> fields) {
        write(name, () -> {
            json.writeStartObject();
            fields.accept(this);
            json.writeEndObject();
        });
    }

    public <T> void group(String name, Optional<T> value, BiConsumer<JsonFields, T> fields) {
        value.ifPresentOrElse(present -> group(name, inner -> fields.accept(inner, present)), () -> absent(name));
    }

    public <T> void list(String name, List<T> values, BiConsumer<JsonFields, T> fields) {
        write(name, () -> {
            json.writeStartArray();
            for (T value : values) {
                json.writeStartObject();
                fields.accept(this, value);
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private void write(String name, Writing value) {
        try {
            json.writeFieldName(name);
            value.write();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @FunctionalInterface
    private interface Writing {
        void write() throws IOException;
    }
}
