package porebench.chart;

import java.math.RoundingMode;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import porebench.method.RoundingRule;

/** The words and numbers in plots, in one language. */
final class Words {
    private static final int DECIMALS = 2;
    private static final int VOLUME_DECIMALS = 4;

    private final ResourceBundle bundle;
    private final Locale locale;

    Words(Locale locale) {
        this.locale = locale;
        this.bundle = ResourceBundle.getBundle(
                "porebench.chart.chart",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    String get(String key, Object... values) {
        String text = bundle.getString(key);
        return values.length == 0 ? text : new MessageFormat(text, locale).format(values);
    }

    /** Says a computed factor in % air to two decimals. */
    String percent(double factor) {
        return number(factor, DECIMALS);
    }

    private String number(double number, int decimals) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(RoundingRule.withoutNoise(number).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /** Returns how whole numbers are written along an axis: without anything between thousands. */
    NumberFormat wholeNumbers() {
        NumberFormat format = NumberFormat.getIntegerInstance(locale);
        format.setGroupingUsed(false);
        return format;
    }

    /** Says an error in % air to two decimals, its sign always shown. */
    String signed(double percent) {
        return (percent > 0 ? "+" : "") + percent(percent);
    }

    /** Says a volume to four decimals. */
    String volume(double volume) {
        return number(volume, VOLUME_DECIMALS);
    }

    /** Sets sentences below one another, as HTML. */
    String lines(String... sentences) {
        return "<html>"
                + Arrays.stream(sentences)
                        .map(text ->
                                text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"))
                        .collect(Collectors.joining("<br>"))
                + "</html>";
    }

    Locale locale() {
        return locale;
    }
}
