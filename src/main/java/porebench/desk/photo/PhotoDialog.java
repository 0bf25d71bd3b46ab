package porebench.desk.photo;

import java.awt.Dimension;
import java.awt.image.BufferedImage;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.WrappedText;
import porebench.desk.frame.dialog.AskDialog;
import porebench.method.Texts;

/** A photo large, over the page; what else can be done with it follows when it is closed. */
final class PhotoDialog {
    private static final int LEAST_WIDTH = 560;
    private static final int LEAST_HEIGHT = 420;
    private static final double SHARE_OF_WINDOW = 0.8;

    /** What a person wants next. */
    enum Wish {
        NOTHING,
        SAVE,
        WITHDRAW
    }

    private final PhotoView view = new PhotoView();
    private final AskDialog dialog;
    private final JButton close;
    private Wish wish = Wish.NOTHING;

    /**
     * Makes the dialog.
     *
     * @param about what photo it is
     */
    PhotoDialog(JComponent over, String title, String about, BufferedImage picture, Texts texts) {
        JPanel content = new JPanel(new MigLayout("insets 0, fill, wrap 1", "[grow,fill]", "[]8[grow,fill]8[]"));
        content.add(new WrappedText("photoAbout", "quiet", about), "wmin 0");
        JScrollPane scroll = new JScrollPane(view);
        content.add(scroll, "grow, push, wmin 0, hmin 0");
        content.add(buttons(texts), "wmin 0");
        content.setPreferredSize(size(over));
        dialog = new AskDialog(over, title, content);
        close = dialog.button("photoClose", texts.get("close"));
        view.getAccessibleContext().setAccessibleName(about);
        view.show(picture);
    }

    private static Dimension size(JComponent over) {
        Dimension window = SwingUtilities.getRoot(over) == null
                ? new Dimension()
                : SwingUtilities.getRoot(over).getSize();
        return new Dimension(Math.max(LEAST_WIDTH, (int) (window.width * SHARE_OF_WINDOW)), Math.max(LEAST_HEIGHT, (int)
                (window.height * SHARE_OF_WINDOW)));
    }

    private JPanel buttons(Texts texts) {
        JPanel row = new JPanel(new MigLayout("insets 0", "[]8[]16[]8[]"));
        JToggleButton dots = new JToggleButton();
        dots.setName("photoDots");
        Commands.say(dots, texts.get("dots"));
        dots.addActionListener(event -> view.fit(!dots.isSelected()));
        row.add(dots);
        row.add(Commands.button("photoTurn", Commands.of(texts.get("turn"), view::turn)));
        row.add(Commands.button("photoSave", Commands.of(texts.get("save"), () -> leave(Wish.SAVE))));
        row.add(Commands.button("photoWithdraw", Commands.of(texts.get("withdraw"), () -> leave(Wish.WITHDRAW))));
        return row;
    }

    private void leave(Wish next) {
        wish = next;
        close.doClick();
    }

    /** Shows the photo until it is closed; returns what is wanted next. */
    Wish ask() {
        dialog.ask();
        return wish;
    }
}
