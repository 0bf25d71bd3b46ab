package porebench.desk.frame.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Screen;
import porebench.desk.SheetImport;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.record.FieldReading;
import porebench.record.id.MixId;

/** The list of the first steps: each leads to where it is done, and is ticked when it is. */
public final class FirstStepsPage implements Screen {
    private final TallPanel panel = new TallPanel(new MigLayout(
            "insets 36 48 36 48, wrap 3, hidemode 3", "[]12[240::,fill]20[0:420:460,grow,fill]", "[]8[]18[]"));
    private final JComponent scroll;
    private final FirstStepsModel model;
    private final Texts texts;
    private final List<Line> lines = new ArrayList<>();
    private final WrappedText state = new WrappedText("welcome.state", "quiet");

    /** A step, its mark and what leads to it. */
    private record Line(FirstStep step, JLabel mark, Action link) {}

    /** Where the list leads. */
    public interface Ways extends SheetImport {
        /** Leads to where a step is done. */
        void go(FirstStep step);

        /** Leads to the field readings of a mix. */
        void readings(MixId mix);

        /** Leads to one field reading, among those of its mix. */
        void reading(FieldReading reading);

        /** Leaves the list, which was put away. */
        void away();

        /** Leads to factor cards, by the names of their records; without any to those that have to come back. */
        void openCards(List<String> cards);
    }

    /** Leads nowhere: the list is drawn and not used. */
    public record Nowhere() implements Ways {
        @Override
        public void openCards(List<String> cards) {
            // Nobody asks for it.
        }

        @Override
        public void go(FirstStep step) {
            // Nobody asks for it.
        }

        @Override
        public void reading(FieldReading reading) {
            // Nobody asks for it.
        }

        @Override
        public void readings(MixId mix) {
            // Nobody asks for it.
        }

        @Override
        public void choose(JComponent over, Taking taking) {
            // Nobody asks for it.
        }

        @Override
        public void away() {
            // Nobody asks for it.
        }
    }

    public FirstStepsPage(FirstStepsModel model, Texts texts, Ways ways) {
        this.model = model;
        this.texts = texts;
        panel.setName("welcome");
        panel.add(Form.heading(texts.get("welcome.title"), "h1"), "spanx 3");
        panel.add(new WrappedText("welcome.words", "quiet", texts.get("welcome.words")), "spanx 3, growx, wmin 0");
        panel.add(state, "spanx 3, growx, wmin 0");
        for (FirstStep step : FirstStep.values()) {
            add(step, ways);
        }
        JPanel others = new JPanel(new MigLayout("insets 0, gap 10", "[][]"));
        others.setOpaque(false);
        others.add(Commands.button(
                "welcome.import",
                Commands.of(texts.get("menu.import"), () -> ways.choose(panel, SheetImport.Taking.ALL))));
        others.add(Commands.button("welcome.away", Commands.of(texts.get("welcome.away"), () -> {
            model.putAway(true);
            ways.away();
        })));
        panel.add(others, "spanx 3, gaptop 16");
        scroll = panel.scrolled();
        model.desk().onChange(this::refresh);
        refresh();
    }

    private void add(FirstStep step, Ways ways) {
        String key = "welcome." + step.symbol();
        Action link = Commands.of(texts.get(key), () -> ways.go(step));
        JButton button = Commands.button(step == FirstStep.MIX ? "welcome.newMix" : key, link);
        JLabel mark = Form.heading("", "h2");
        mark.setName(key + ".mark");
        lines.add(new Line(step, mark, link));
        panel.add(mark, "w 22!, align center");
        panel.add(button);
        panel.add(new WrappedText(key + ".why", "quiet", texts.get(key + ".why")), "wmin 0, aligny center");
    }

    private void refresh() {
        Set<FirstStep> done = model.done();
        for (Line line : lines) {
            boolean isDone = done.contains(line.step());
            line.mark().setText(isDone ? "✔" : "○");
            line.mark().getAccessibleContext().setAccessibleName(texts.get(isDone ? "welcome.done" : "welcome.open"));
            line.link().setEnabled(model.isOpen(line.step()));
        }
        state.setText(model.next()
                .map(next -> texts.get(
                        "welcome.state",
                        Integer.toString(done.size()),
                        Integer.toString(FirstStep.values().length),
                        texts.get("welcome." + next.symbol() + ".plain")))
                .orElseGet(() -> texts.get("welcome.all-done")));
    }

    @Override
    public JComponent component() {
        return scroll;
    }
}
