package porebench.desk.frame;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.UIManager;

/** The picture of the window in the task bar: a stone with its pores. */
final class AppMark {
    private AppMark() {}

    static List<Image> pictures() {
        return Stream.of(16, 24, 32, 48, 64, 128).<Image>map(AppMark::picture).toList();
    }

    static BufferedImage picture(int side) {
        BufferedImage picture = new BufferedImage(side, side, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = picture.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.scale(side / 32.0, side / 32.0);
        pen.setColor(UIManager.getColor("Porebench.state.inForce"));
        pen.fill(new RoundRectangle2D.Double(1, 3, 30, 26, 18, 18));
        pen.setColor(UIManager.getColor("Porebench.head"));
        pen.fill(new Ellipse2D.Double(7, 9, 8, 8));
        pen.fill(new Ellipse2D.Double(18, 8, 5, 5));
        pen.fill(new Ellipse2D.Double(17, 17, 7, 7));
        pen.fill(new Ellipse2D.Double(9, 20, 4, 4));
        pen.dispose();
        return picture;
    }
}
