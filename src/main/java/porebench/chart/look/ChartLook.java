package porebench.chart.look;

import java.awt.Color;
import java.awt.Font;
import porebench.quantity.Require;

/**
 * How a plot looks, as the theme of the window says.
 *
 * @param background behind everything
 * @param text axes, labels and legend
 * @param grid lines behind the data
 * @param counted trials that count, their mean and its interval
 * @param struck trials that a person struck
 * @param voided trials that their own readings void, and signals
 * @param factor the factor as reported or issued
 * @param font of labels; the legend has the same
 * @param scale how many device pixels one pixel of a drawing takes, greater than 0; 1 on a usual screen
 */
public record ChartLook(
        Color background,
        Color text,
        Color grid,
        Color counted,
        Color struck,
        Color voided,
        Color factor,
        Font font,
        double scale) {
    public ChartLook {
        Require.positive("scale", scale);
    }

    /**
     * Returns the look of pictures that are kept or printed: dark on white, whatever the window looks like.
     *
     * @param font of labels
     */
    public static ChartLook onPaper(Font font) {
        return new ChartLook(
                Color.WHITE,
                new Color(0x1C2321),
                new Color(0xC4CBC9),
                new Color(0x14706A),
                new Color(0x5A6663),
                new Color(0xB3261E),
                new Color(0x8A5A00),
                font,
                1);
    }

    float width(double pixels) {
        return (float) (pixels * scale);
    }
}
