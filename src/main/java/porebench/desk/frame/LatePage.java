package porebench.desk.frame;

import java.awt.BorderLayout;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import porebench.desk.Attention;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.desk.Screen;
import porebench.desk.Settings;
import porebench.desk.form.History;
import porebench.desk.form.TallPanel;
import porebench.desk.table.TableMemory;
import porebench.record.id.MixId;

/**
 * A page that is made when it is first shown, and that computes nothing while it is hidden.
 *
 * @param <P> the page that is made
 */
final class LatePage<P extends Screen> implements Page {
    private final DeskModel desk;
    private final String name;
    private final String title;
    private final Supplier<P> maker;
    private final Attention attention;
    private final JPanel place = new JPanel(new BorderLayout());
    private final ScrollPlaces places = new ScrollPlaces(place);
    private Optional<P> made = Optional.empty();

    /**
     * Keeps a place for a page.
     *
     * @param name its name
     * @param title its title
     * @param maker makes it
     * @param settings where it is remembered how a person left its tables
     */
    LatePage(DeskModel desk, String name, String title, Supplier<P> maker, Settings settings) {
        this.desk = desk;
        this.name = name;
        this.title = title;
        this.maker = maker;
        this.attention = desk.attention();
        place.setName("page." + name);
        TableMemory.keep(place, name, settings);
    }

    /** Returns where it stands in the window, which may be empty yet; always the same component. */
    JComponent place() {
        return place;
    }

    /** Returns the page as of now; it is made if it was not. */
    P page() {
        P page = made.orElseGet(this::make);
        attention.wake();
        return page;
    }

    private P make() {
        P page = desk.make(attention, maker);
        made = Optional.of(page);
        place.add(page.component());
        TallPanel.name(place, title);
        place.revalidate();
        return page;
    }

    /** Brings it to where it was left the last time it showed a mix; to its top the first time. */
    void turnTo(Optional<MixId> mix) {
        places.turnTo(mix);
    }

    /** Lets it compute nothing until it is shown next. */
    void rest() {
        attention.rest();
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public JComponent component() {
        page();
        return place;
    }

    @Override
    public void focus() {
        // Once it stands where it was left.
        SwingUtilities.invokeLater(() -> made.filter(page -> place.isShowing()).ifPresent(Screen::focus));
    }

    @Override
    public void finishTyping() {
        made.ifPresent(Screen::finishTyping);
    }

    @Override
    public void beginNew() {
        page().beginNew();
    }

    @Override
    public void dropDraft() {
        made.ifPresent(Screen::dropDraft);
    }

    @Override
    public Optional<History<?>> history() {
        return made.flatMap(Screen::history);
    }

    @Override
    public void save() {
        made.ifPresent(Screen::save);
    }
}
