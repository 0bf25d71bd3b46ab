package porebench.desk;

import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import porebench.desk.frame.Theme;

/** Paints components as they look in a window, for people to look at; needs a display. */
public final class Shots {
    private Shots() {}

    /**
     * Shows a component in a frame of its own and saves what it looks like.
     *
     * @param theme the theme it is made and shown in
     * @param widthPixels the width of the frame's inside
     * @param heightPixels the height of the frame's inside
     * @param maker makes the component, on the event thread
     * @param png the file to write
     */
    public static void component(
            Theme theme, int widthPixels, int heightPixels, Supplier<? extends Component> maker, Path png)
            throws Exception {
        EventThread.run(theme::apply);
        JFrame frame = EventThread.call(() -> {
            JFrame window = new JFrame();
            window.setUndecorated(true);
            window.add(maker.get());
            window.setSize(widthPixels, heightPixels);
            window.setVisible(true);
            return window;
        });
        EventThread.settle();
        EventThread.run(() -> {
            save(frame.getRootPane(), png);
            frame.dispose();
        });
    }

    /** Saves what a component that is showing looks like now. */
    public static void save(Component component, Path png) {
        BufferedImage picture =
                new BufferedImage(component.getWidth(), component.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = picture.createGraphics();
        component.paint(graphics);
        graphics.dispose();
        try {
            Files.createDirectories(png.toAbsolutePath().getParent());
            ImageIO.write(picture, "png", png.toFile());
        } catch (IOException failure) {
            throw new UncheckedIOException("writing " + png, failure);
        }
    }
}
