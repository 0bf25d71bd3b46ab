package porebench.print;

import java.io.IOException;

/** Draws a caution on a sheet: the sign, bold words, a grey ground. */
final class Cautions {
    private static final double SIZE = 9;
    private static final double SIGN = 16;

    private Cautions() {}

    static void draw(Flow flow, String text, double indent) throws IOException {
        double width = flow.width() - indent - SIGN;
        FittedText fitted = new TextFit(Weight.BOLD, SIZE, 7, width - 4, 3).fit(flow.faces(), text);
        double height = fitted.height() + 4;
        flow.need(height + 4);
        flow.pen().shade(flow.left() + indent - 4, flow.top(), width + SIGN + 4, height, 0.88);
        flow.pen().cautionSign(flow.left() + indent, flow.top() + 2, 10.5);
        flow.pen().text(fitted, flow.left() + indent + SIGN, flow.top() + 2, width - 4, Align.LEFT);
        flow.down(height + 4);
    }
}
