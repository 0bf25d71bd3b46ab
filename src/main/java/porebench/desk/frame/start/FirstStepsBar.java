package porebench.desk.frame.start;

import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;

/** The way back to the list of first steps from every page, for as long as it is wanted: how far it is, and what comes next. */
public final class FirstStepsBar {
    private final JPanel panel =
            new JPanel(new MigLayout("insets 4 22 4 22, fillx, hidemode 3", "[grow,fill,0::]18[]8[]", "[]"));
    private final WrappedText words = new WrappedText("firstSteps.words", "quiet");
    private final JButton list;
    private final FirstStepsModel model;
    private final Texts texts;

    /**
     * Makes the bar.
     *
     * @param open turns to the list
     * @param go leads to where a step is done
     */
    public FirstStepsBar(FirstStepsModel model, Texts texts, Runnable open, Consumer<FirstStep> go) {
        this.model = model;
        this.texts = texts;
        panel.setName("firstSteps");
        list = Commands.button("firstSteps.list", Commands.of(texts.get("first-steps.list"), open));
        panel.add(words, "wmin 0, aligny center");
        panel.add(Commands.button(
                "firstSteps.next",
                Commands.of(texts.get("first-steps.next"), () -> model.next().ifPresent(go))));
        panel.add(list);
        panel.setVisible(false);
    }

    public JComponent component() {
        return panel;
    }

    /**
     * Shows how far it is.
     *
     * @param isListed whether the list itself is on view
     */
    public void refresh(boolean isListed) {
        boolean isWanted = model.isWanted() && !isListed;
        panel.setVisible(isWanted);
        if (isWanted) {
            words.setText(model.next()
                    .map(next -> texts.get(
                            "welcome.state",
                            Integer.toString(model.done().size()),
                            Integer.toString(FirstStep.values().length),
                            texts.get("welcome." + next.symbol() + ".plain")))
                    .orElse(""));
        }
    }
}
