package porebench.desk.frame;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Settings;
import porebench.desk.Tools;
import porebench.desk.form.Commands;
import porebench.desk.form.Tasks;
import porebench.desk.frame.book.GuardedBook;
import porebench.desk.frame.dialog.FrameTexts;
import porebench.desk.frame.dialog.SwingAsker;
import porebench.desk.frame.rail.MixHead;
import porebench.desk.frame.rail.MixRail;
import porebench.desk.frame.start.FirstStepsPage;
import porebench.method.Texts;
import porebench.record.book.LabBook;

/** All that stands in the window, made and drawn where no window is: for an archive of the classes that a start needs. */
public final class DrawnPages {
    private static final int WIDTH = 980;
    private static final int HEIGHT = 720;

    private DrawnPages() {}

    /**
     * Draws every page of a lab book's first mix, and what stands around them.
     *
     * @param outside what a window needs from outside
     * @param file the lab book
     * @return how many pixels differ from the first, so that nothing is drawn in vain
     */
    public static int draw(Outside outside, Path file) {
        Theme.LIGHT.apply();
        Locale locale = outside.machine();
        Texts texts = FrameTexts.in(locale);
        try (LabBook book = GuardedBook.shelf(outside.shelf()).open(file)) {
            DeskModel desk = new DeskModel(
                    new Tools(
                            GuardedBook.shelf(outside.shelf()),
                            outside.sheets(),
                            outside.press(),
                            Tasks.direct(),
                            new SwingAsker(locale, outside.settings(), outside.log()),
                            outside.clock(),
                            outside.zone(),
                            locale),
                    book);
            Pages pages = Pages.of(
                    desk,
                    mix -> {},
                    meter -> {},
                    () -> {},
                    trial -> {},
                    new FirstStepsPage.Nowhere(),
                    Settings.inMemory());
            Action newMix = Commands.of(texts.get("rail.new"), "ctrl shift N", () -> {});
            MixRail rail = new MixRail(desk, texts, pages.registers(), newMix, mix -> {}, page -> {});
            MixHead head = new MixHead(desk, texts, pages.steps(), page -> {});
            StatusStrip strip = new StatusStrip(desk, texts);
            desk.rows().stream().findFirst().ifPresent(row -> desk.select(row.mixId()));
            rail.refresh();
            head.refresh();
            strip.refresh();
            int drawn = List.of(rail.component(), head.component(), strip.component()).stream()
                    .mapToInt(DrawnPages::draw)
                    .sum();
            return drawn
                    + pages.all().stream()
                            .mapToInt(page -> draw(page.component()))
                            .sum();
        }
    }

    private static int draw(JComponent component) {
        component.setSize(WIDTH, HEIGHT);
        layOut(component);
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        component.paint(graphics);
        graphics.dispose();
        int drawn = 0;
        for (int pixel : image.getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH)) {
            drawn += pixel == image.getRGB(0, 0) ? 0 : 1;
        }
        return drawn;
    }

    /** Lays out without a window, which alone would do it of itself. */
    private static void layOut(Container parent) {
        parent.doLayout();
        for (Component child : parent.getComponents()) {
            if (child instanceof Container inside) {
                layOut(inside);
            }
        }
    }
}
