package porebench.desk.meter;

import java.awt.CardLayout;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.WrappedText;

/** The page of a meter as it is seen: its story, the form of a calibration, or what to do while there is no meter. */
final class MeterPanel {
    private static final String NONE = "none";
    private static final String STORY = "story";
    private static final String ENTRY = "entry";

    private final CardLayout layout = new CardLayout();
    private final JPanel cards = new JPanel(layout);
    private final MeterModel model;
    private final MeterActions actions;
    private final StoryPanel story;
    private final CalibrationPanel entry;
    private final MeterPrinting printing;

    MeterPanel(MeterModel model, MeterActions actions) {
        this.model = model;
        this.actions = actions;
        printing = new MeterPrinting(model, this::component, this::tell);
        story = new StoryPanel(model, actions, printing);
        entry = new CalibrationPanel(model, actions);
        cards.setName("meter");
        cards.add(none(), NONE);
        cards.add(story.component(), STORY);
        cards.add(entry.component(), ENTRY);
        model.onChange(this::refresh);
        // Plots take their colours and fonts when they are made, so another theme needs them made anew.
        UIManager.addPropertyChangeListener(change -> {
            if ("lookAndFeel".equals(change.getPropertyName())) {
                SwingUtilities.invokeLater(this::redrawPlots);
            }
        });
        refresh();
    }

    private JPanel none() {
        JPanel panel = new JPanel(new MigLayout("insets 24, fillx, wrap 1", "[grow,fill,0::]", "[]16[]"));
        WrappedText text = new WrappedText("meter.none", "quiet");
        text.setText(model.texts().get("none"));
        panel.add(text, "wmin 0");
        panel.add(Commands.button("meter.none.back", actions.back), "growx 0");
        return panel;
    }

    JComponent component() {
        return cards;
    }

    private void tell(String words) {
        story.tell(words);
    }

    void finishTyping() {
        entry.finishTyping();
    }

    void focusFirst() {
        entry.focusFirst();
    }

    /** Asks nothing of the lab book, which may be closed by now: a theme can outlive the window. */
    private void redrawPlots() {
        if (model.entry().isOpen()) {
            entry.showResults();
        } else {
            story.showPlots();
        }
    }

    void refresh() {
        actions.refresh();
        printing.refresh();
        if (model.story().isEmpty()) {
            layout.show(cards, NONE);
        } else if (model.entry().isOpen()) {
            entry.refresh();
            layout.show(cards, ENTRY);
        } else {
            story.refresh();
            layout.show(cards, STORY);
        }
    }
}
