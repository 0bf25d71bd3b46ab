package porebench.chart;

import java.math.RoundingMode;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import porebench.method.RoundingRule;

/** The words and numbers in plots, in one language. */
final class Words {
    private static final int DECIMALS = 2;

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
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setMinimumFractionDigits(DECIMALS);
        format.setMaximumFractionDigits(DECIMALS);
        return format.format(RoundingRule.withoutNoise(factor).setScale(DECIMALS, RoundingMode.HALF_EVEN));
    }

    Locale locale() {
        return locale;
    }
}
