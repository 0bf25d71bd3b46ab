package porebench.desk.frame;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.WindowConstants;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.desk.form.Commands;
import porebench.desk.form.UnitSystem;
import porebench.desk.frame.book.BookWork;
import porebench.desk.frame.book.InventedBooks;
import porebench.desk.frame.book.NoBookPage;
import porebench.desk.frame.book.Trouble;
import porebench.desk.frame.book.Turning;
import porebench.desk.frame.dialog.FrameTexts;
import porebench.desk.frame.rail.MixHead;
import porebench.desk.frame.rail.MixRail;
import porebench.evidence.RegisterRow;
import porebench.method.Texts;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** The one window: mixes and registers on the left, the selected mix's steps or a register on the right. */
public final class WorkbenchFrame {
    private static final Dimension USUAL_SIZE = new Dimension(1280, 800);
    private static final Dimension LEAST_SIZE = new Dimension(960, 620);
    private static final int RAIL_WIDTH = 300;
    private static final String BENCH = "bench";
    private static final String NO_BOOK = "noBook";

    private final DeskModel desk;
    private final WindowMemory memory;
    private final Texts texts;
    private final JFrame frame = new JFrame();
    private final JPanel content = new JPanel(new BorderLayout());
    private final CardLayout views = new CardLayout();
    private final JPanel view = new JPanel(views);
    private final CardLayout cards = new CardLayout();
    private final JPanel pageArea = new JPanel(cards);
    private final JPanel right = new JPanel(new BorderLayout());
    private final JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true);
    private final Pages pages;
    private final MixRail rail;
    private final MixHead head;
    private final StatusStrip strip;
    private final Bands bands;
    private final NoBookPage noBook;
    private final BookWork work;
    private final FrameMenus menus;
    private final Lookout lookout;
    private final FrameTitle title;
    private Page current;
    private Page lastStep;
    private Optional<Runnable> anew = Optional.empty();
    private boolean isFirst = true;
    private boolean beginning;
    private boolean closed;

    /**
     * Makes the window; {@link #show()} opens it.
     *
     * @param desk what it looks at
     * @param memory what was remembered of the last day
     * @param invented the lab books of invented laboratories
     * @param log returns the file in which the details of a failure stand; empty when there is none
     */
    WorkbenchFrame(DeskModel desk, WindowMemory memory, InventedBooks invented, Supplier<Optional<Path>> log) {
        this.desk = desk;
        this.memory = memory;
        this.texts = FrameTexts.in(desk.tools().locale());
        content.setName("workbench");
        pages = Pages.of(
                desk,
                this::openMix,
                this::openMeter,
                () -> turnTo(pages().registerOf(pages().meter())),
                this::openTrial,
                new Leading(this),
                memory.settings());
        current = pages.steps().get(0);
        lastStep = current;
        noBook = new NoBookPage(texts, log);
        work = BookWork.of(desk, texts, content, invented, this::leave, new Turned(), this::openTrial);
        bands = new Bands(this, work);
        Action newMix = Commands.of(texts.get("rail.new"), "ctrl shift N", this::beginMix);
        rail = new MixRail(desk, texts, pages.registers(), newMix, this::openMix, this::turnTo);
        head = new MixHead(desk, texts, pages.steps(), this::turnTo);
        strip = new StatusStrip(desk, texts);
        menus = new FrameMenus(this, work, newMix, log);
        title = new FrameTitle(desk, pages, head, rail, frame, texts);
        lookout = new Lookout(desk, content, texts, () -> pages.bench().look(rail.component()));
        build();
        work.offer(noBook, texts);
        desk.onChange(this::refresh);
    }

    private void build() {
        pages.all().forEach(page -> pageArea.add(page.place(), page.name()));
        right.add(head.component(), BorderLayout.NORTH);
        head.keysIn(content);
        right.add(pageArea, BorderLayout.CENTER);
        int scaled = UIScale.scale(RAIL_WIDTH);
        split.setLeftComponent(RoomForType.around(rail.component(), 230, 460, new Dimension(scaled * 2 / 3, 0)));
        split.setRightComponent(RoomForType.around(right, 820, 500, new Dimension(scaled, 0)));
        Spoken.dress(frame, split, texts);
        view.add(noBook.component(), NO_BOOK);
        view.add(split, BENCH);
        content.add(bands.above(), BorderLayout.NORTH);
        content.add(view, BorderLayout.CENTER);
        content.add(bands.below(strip.component()), BorderLayout.SOUTH);
        frame.setName("frame");
        frame.setContentPane(content);
        frame.setJMenuBar(menus.bar());
        frame.setFocusTraversalPolicy(new FocusWay(right));
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.setIconImages(AppMark.pictures());
        frame.addWindowListener(lookout.andClosing(this::close));
    }

    /** Opens the window where it was left. */
    public void show() {
        Rectangle screen = WindowPlace.free(frame.getGraphicsConfiguration());
        frame.setMinimumSize(WindowPlace.within(screen, LEAST_SIZE));
        frame.setSize(WindowPlace.within(screen, memory.size(UIScale.scale(USUAL_SIZE))));
        split.setDividerLocation(WindowPlace.rail(frame.getWidth(), UIScale.scale(RAIL_WIDTH)));
        frame.setLocation(
                screen.x + (screen.width - frame.getWidth()) / 2, screen.y + (screen.height - frame.getHeight()) / 2);
        refresh();
        pages.named(memory.page()).ifPresent(this::turnTo);
        frame.setVisible(true);
        rail.focusMixes();
        lookout.begin();
    }

    JFrame frame() {
        return frame;
    }

    JComponent content() {
        return content;
    }

    DeskModel desk() {
        return desk;
    }

    Turning turning() {
        return work.turning();
    }

    Texts texts() {
        return texts;
    }

    WindowMemory memory() {
        return memory;
    }

    Pages pages() {
        return pages;
    }

    Page current() {
        return current;
    }

    /** Looks for a mix by its name. */
    void find() {
        rail.find();
    }

    private void leave(Runnable then) {
        pages.all().forEach(Page::finishTyping);
        then.run();
    }

    /** Turns to a page, which takes the keyboard; stays when a draft is to be kept. */
    void turnTo(Page page) {
        Runnable turn = () -> {
            current = page;
            lastStep = pages.isStep(page) ? page : lastStep;
            refresh();
            current.focus();
        };
        // Nothing is left where the page stays.
        Optional.of(page).filter(shown -> shown == current).ifPresentOrElse(shown -> turn.run(), () -> leave(turn));
    }

    /** Says what was typed and went nowhere. */
    void lost(String letters) {
        strip.lost(letters);
    }

    /** Turns to a mix, on the step that was seen last; what is on view stays until it has been read. */
    void openMix(MixId mixId) {
        boolean isShown = desk.selected().filter(mixId::equals).isPresent() && pages.isStep(current);
        if (isShown) {
            refresh();
        } else {
            leave(() -> desk.select(mixId, () -> {
                current = lastStep;
                refresh();
            }));
        }
    }

    /** Turns to the page of a meter. */
    void openMeter(MeterId meterId) {
        leave(() -> {
            pages.meter().page().open(meterId);
            current = pages.meter();
            refresh();
            current.focus();
        });
    }

    /** Turns to a trial among those of its determination. */
    void openTrial(TrialId trialId) {
        leave(() -> Leading.toTrial(desk, trialId, trial -> {
            current = pages.trials();
            lastStep = current;
            refresh();
            pages.trials().page().open(trial.determinationId(), trialId);
        }));
    }

    /** Returns what is done with whole lab books. */
    BookWork work() {
        return work;
    }

    /** Turns to the list of first steps, also where it was put away. */
    void openFirstSteps() {
        bands.openFirstSteps();
    }

    /** Begins the draft of a new mix. */
    void beginMix() {
        leave(() -> {
            beginning = true;
            current = pages.steps().get(0);
            lastStep = current;
            desk.selectNone();
            pages.mix().page().begin();
            refresh();
        });
    }

    /** Shows the lab book that is open from now on. */
    void opened(Path file) {
        memory.rememberFile(file);
        work.turning().stands(file);
        beginning = false;
        current = current == pages.first() ? lastStep : current;
        strip.say(file);
        String last = memory.mix();
        Optional<MixId> mix = desk.rows().stream()
                .map(RegisterRow::mixId)
                .filter(id -> id.text().equals(last))
                .findFirst()
                .or(() -> desk.rows().stream().map(RegisterRow::mixId).findFirst());
        Optional<LatePage<?>> left = isFirst ? pages.named(memory.page()) : Optional.empty();
        isFirst = false;
        // A step can only be turned to once there is a mix to show on it.
        mix.ifPresentOrElse(id -> desk.select(id, () -> left.ifPresent(this::turnTo)), desk::selectNone);
        refresh();
    }

    /** Shows everything in another theme. */
    void show(Theme theme) {
        memory.remember(theme);
        theme.apply();
        refresh();
    }

    /** Shows everything in another unit system. */
    void show(UnitSystem units) {
        memory.remember(units);
        desk.show(units);
    }

    private void refresh() {
        if (desk.selected().isPresent()) {
            beginning = false;
        }
        rail.refresh();
        head.refresh();
        boolean onSteps = pages.isStep(current);
        if (onSteps && desk.hasBook() && desk.rows().isEmpty() && !beginning) {
            current = pages.first();
        } else if (onSteps && desk.selected().isEmpty()) {
            // Without a mix only its design can be written; the other steps follow from it.
            current = pages.steps().get(0);
        }
        head.component().setVisible(pages.isStep(current));
        head.mark(current);
        rail.mark(pages.registerOf(current));
        if (desk.hasBook()) {
            pages.show(current, pages.isStep(current) ? desk.selected() : Optional.empty());
        }
        cards.show(pageArea, current.name());
        right.getAccessibleContext().setAccessibleName(current.title());
        strip.refresh();
        views.show(view, desk.hasBook() ? BENCH : NO_BOOK);
        menus.offer(desk.hasBook(), desk.isTraining());
        bands.refresh();
        title.refresh();
        memory.rememberPerson(desk.person());
    }

    /** What the window does when it turns to a lab book. */
    private final class Turned implements Turning.Window {
        @Override
        public void opening(Path file) {
            noBook.opening(String.valueOf(file.getFileName()));
        }

        @Override
        public void opened(Path file) {
            WorkbenchFrame.this.opened(file);
            rail.focusMixes();
        }

        @Override
        public void troubled(Trouble trouble) {
            noBook.show(trouble);
            refresh();
            noBook.focus();
        }

        @Override
        public void gone(Path file) {
            memory.forgetFile(file);
        }
    }

    /** Closes the window and the lab book, unless a draft is to be kept; what is being saved is saved before. */
    public void close() {
        closeThen(() -> {});
    }

    private void closeThen(Runnable then) {
        if (!closed) {
            desk.tools().tasks().whenAnswered(() -> leave(() -> end(then)));
        }
    }

    /** Says how the window is made anew in its place once it and its lab book are closed, such as in another language. */
    void makeAnewBy(Runnable maker) {
        anew = Optional.of(() -> closeThen(maker));
    }

    /** Returns what makes the window anew in its place; empty where nothing does. */
    Optional<Runnable> anew() {
        return anew;
    }

    private void end(Runnable then) {
        if (closed) {
            return;
        }
        closed = true;
        lookout.end();
        memory.remember(frame.getSize());
        memory.rememberPage(current.name());
        memory.rememberMix(desk.selected().map(MixId::text).orElse(""));
        frame.setVisible(false);
        work.turning().close(desk.end(), () -> {
            frame.dispose();
            then.run();
        });
    }

    /** Returns whether the window was closed. */
    public boolean isClosed() {
        return closed;
    }
}
