package porebench.chart;

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
 * @param voided trials that their own readings void
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

    Color of(TrialPoint.State state) {
        return switch (state) {
            case COUNTED -> counted;
            case STRUCK -> struck;
            case VOID -> voided;
        };
    }

    float width(double pixels) {
        return (float) (pixels * scale);
    }
}
