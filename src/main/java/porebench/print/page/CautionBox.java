package porebench.print.page;

import java.io.IOException;
import java.util.List;
import porebench.method.MeterType;

/** Draws a caution on a sheet: the sign, bold words, a grey ground. */
public final class CautionBox {
    private static final double SIZE = 9;
    private static final double SIGN = 16;

    private CautionBox() {}

    /** Returns the cautions of a calibration of one type of meter, as keys of their texts. */
    public static List<String> ofCalibration(MeterType type) {
        return List.of("caution.pressure." + type, "caution.calibration-lift", "caution.calibration-plate");
    }

    public static void draw(Flow flow, String text, double indent) throws IOException {
        Block block = block(flow, text, indent);
        flow.need(block.height());
        block.drawing().draw(flow.top());
        flow.down(block.height());
    }

    public static Block block(Flow flow, String text, double indent) throws IOException {
        double width = flow.width() - indent - SIGN;
        FittedText fitted = new TextFit(Weight.BOLD, SIZE, 7, width - 4, 3).fit(flow.faces(), text);
        double height = fitted.height() + 4;
        return new Block(height + 4, top -> {
            flow.pen().shade(flow.left() + indent - 4, top, width + SIGN + 4, height, 0.88);
            flow.pen().cautionSign(flow.left() + indent, top + 2, 10.5);
            flow.pen().text(fitted, flow.left() + indent + SIGN, top + 2, width - 4, Align.LEFT);
        });
    }
}
