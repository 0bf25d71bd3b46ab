package porebench.chart.look;

import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import porebench.method.Digits;
import porebench.method.RoundingRule;
import porebench.method.Texts;

/** The words and numbers in plots, in one language. */
public final class PlotWords {
    private static final int DECIMALS = Digits.AIR;
    private static final int FINE_DECIMALS = Digits.SCATTER;
    private static final int VOLUME_DECIMALS = 4;
    private static final int PLAIN_DECIMALS = 12;

    private final Texts texts;
    private final Locale locale;

    public PlotWords(Locale locale) {
        this.locale = locale;
        this.texts = Texts.of("porebench.chart.chart", locale);
    }

    public String get(String key, Object... values) {
        return texts.get(key, values);
    }

    /** Says a computed factor in % air to two decimals. */
    public String percent(double factor) {
        return number(factor, DECIMALS);
    }

    /** Says an uncertainty in % air to three decimals. */
    public String fine(double percent) {
        return number(percent, FINE_DECIMALS);
    }

    /** Says a share of a whole in whole per cent. */
    public String share(double share) {
        return Digits.share(share);
    }

    private String number(double number, int decimals) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(RoundingRule.withoutNoise(number).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /** Returns how whole numbers are written along an axis: without anything between thousands. */
    public NumberFormat wholeNumbers() {
        NumberFormat format = NumberFormat.getIntegerInstance(locale);
        format.setGroupingUsed(false);
        return format;
    }

    /** Says an error in % air to two decimals, its sign always shown. */
    public String signed(double percent) {
        return (percent > 0 ? "+" : "") + percent(percent);
    }

    /** Says a number to three decimals. */
    public String threeDecimals(double number) {
        return number(number, FINE_DECIMALS);
    }

    /** Says a number as it was typed. */
    public String plain(double number) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMaximumFractionDigits(PLAIN_DECIMALS);
        return format.format(RoundingRule.withoutNoise(number));
    }

    /** Says a volume to four decimals. */
    public String volume(double volume) {
        return number(volume, VOLUME_DECIMALS);
    }

    /** Sets sentences below one another, as HTML. */
    public String lines(String... sentences) {
        return "<html>"
                + Arrays.stream(sentences)
                        .map(text ->
                                text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"))
                        .collect(Collectors.joining("<br>"))
                + "</html>";
    }

    public Locale locale() {
        return locale;
    }
}
