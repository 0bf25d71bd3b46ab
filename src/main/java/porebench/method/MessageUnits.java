package porebench.method;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import porebench.quantity.DensityUnit;
import porebench.quantity.LengthUnit;
import porebench.quantity.MassUnit;
import porebench.quantity.PressureUnit;
import porebench.quantity.TemperatureUnit;
import porebench.quantity.Typed;
import porebench.quantity.Unit;
import porebench.quantity.VolumeUnit;

/**
 * One message for a reader of US units: behind the places of its pattern stand SI units, and both are read in their counterparts.
 *
 * <p>A unit holds for the places before it that only "to" and the like divide, as in "from {1} to {2} L". What was typed in an SI
 * unit is said in its counterpart, too, so that a number and its bounds can be held against one another.
 */
final class MessageUnits {
    private static final List<Pair<?>> PAIRS = List.of(
            new Pair<>(DensityUnit.KILOGRAM_PER_CUBIC_METRE, DensityUnit.POUND_PER_CUBIC_FOOT),
            new Pair<>(PressureUnit.KILOPASCAL, PressureUnit.POUND_PER_SQUARE_INCH),
            new Pair<>(VolumeUnit.CUBIC_METRE, VolumeUnit.CUBIC_YARD),
            new Pair<>(VolumeUnit.LITRE, VolumeUnit.CUBIC_FOOT),
            new Pair<>(MassUnit.KILOGRAM, MassUnit.POUND),
            new Pair<>(MassUnit.GRAM, MassUnit.POUND),
            new Pair<>(TemperatureUnit.CELSIUS, TemperatureUnit.FAHRENHEIT),
            new Pair<>(LengthUnit.METRE, LengthUnit.FOOT));

    private static final Pattern PLACES = Pattern.compile(
            "\\{\\d\\}(?: (?:to|and|a|y|à|et|bis|und) \\{\\d\\})* (kg/m3|kPa|m3|kg|L|C|g|m)(?![\\p{L}\\w/])");

    private static final Pattern PLACE = Pattern.compile("\\{(\\d)\\}");

    private final String pattern;
    private final Object[] values;

    private MessageUnits(String pattern, Object[] values) {
        this.pattern = pattern;
        this.values = values;
    }

    private record Pair<Q>(Unit<Q> kept, Unit<Q> read) {
        double turn(double number) {
            return read.in(kept.of(number));
        }
    }

    /** Turns a pattern and its values for a reader of US units. */
    static MessageUnits us(String pattern, List<Object> values) {
        Object[] turned = values.stream().map(MessageUnits::typed).toArray();
        StringBuilder written = new StringBuilder();
        Matcher places = PLACES.matcher(pattern);
        while (places.find()) {
            Pair<?> pair = pair(places.group(1)).orElseThrow();
            Matcher place = PLACE.matcher(places.group());
            while (place.find()) {
                int at = Integer.parseInt(place.group(1));
                turned[at] = turned(values.get(at), pair);
            }
            String before = places.group().substring(0, places.start(1) - places.start());
            places.appendReplacement(
                    written, Matcher.quoteReplacement(before + pair.read().symbol()));
        }
        places.appendTail(written);
        return new MessageUnits(written.toString(), turned);
    }

    private static Optional<Pair<?>> pair(String symbol) {
        return PAIRS.stream()
                .filter(pair -> pair.kept().symbol().equals(symbol))
                .findFirst();
    }

    private static Object turned(Object value, Pair<?> pair) {
        if (value instanceof Double computed && Double.isFinite(computed)) {
            return pair.turn(computed);
        }
        return value instanceof BigDecimal typed ? pair.turn(typed.doubleValue()) : value;
    }

    private static Object typed(Object value) {
        return value instanceof Typed<?> typed
                ? pair(typed.unit().symbol())
                        .<Object>map(pair -> new Turned(
                                pair.turn(typed.number().doubleValue()),
                                pair.read().symbol()))
                        .orElse(value)
                : value;
    }

    /** A number that was typed in another unit. */
    record Turned(double number, String symbol) {}

    String pattern() {
        return pattern;
    }

    List<Object> values() {
        return Arrays.asList(values);
    }
}
