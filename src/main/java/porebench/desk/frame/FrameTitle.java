package porebench.desk.frame;

import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JFrame;
import porebench.desk.DeskModel;
import porebench.desk.frame.dialog.TrainingBand;
import porebench.desk.frame.rail.MixHead;
import porebench.desk.frame.rail.MixRail;
import porebench.method.Texts;

/** The title of the window: the lab book, and on which pages something is typed and not saved; their buttons are marked as well. */
final class FrameTitle {
    private final DeskModel desk;
    private final Pages pages;
    private final MixHead head;
    private final MixRail rail;
    private final JFrame frame;
    private final Texts texts;

    FrameTitle(DeskModel desk, Pages pages, MixHead head, MixRail rail, JFrame frame, Texts texts) {
        this.desk = desk;
        this.pages = pages;
        this.head = head;
        this.rail = rail;
        this.frame = frame;
        this.texts = texts;
        desk.unsaved().onChange(this::refresh);
    }

    void refresh() {
        Set<String> typed = desk.hasBook() ? TypedPages.of(desk.unsaved(), desk.selected()) : Set.of();
        head.markTyped(typed);
        rail.markTyped(typed);
        String where = pages.all().stream()
                .filter(page -> typed.contains(page.name()))
                .map(LatePage::title)
                .collect(Collectors.joining(", "));
        String words = desk.hasBook()
                ? texts.get("frame.title", desk.book().name())
                : texts.get("frame.title", texts.get("no-book.title"));
        frame.setTitle(TrainingBand.title(
                (JComponent) frame.getContentPane(),
                where.isEmpty() ? words : texts.get("frame.title-typed", words, where),
                texts));
        frame.getRootPane().putClientProperty("Window.documentModified", !typed.isEmpty());
    }
}
