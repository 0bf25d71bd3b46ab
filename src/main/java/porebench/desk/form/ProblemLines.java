package porebench.desk.form;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.method.Problem;
import porebench.method.ProblemText;

/**
 * Problems as sentences below one another, errors before doubts: for a table's cells and for what belongs to no field.
 *
 * <p>A sign leads each sentence, so that it is told apart without its colour.
 */
public final class ProblemLines {
    private static final String ERROR_SIGN = "\u2716 ";
    private static final String DOUBT_SIGN = "\u25b2 ";

    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy 4", "[grow,fill]"));
    private final ProblemText problemText;
    private List<Problem> shown = List.of();
    private JComponent around = panel;

    /**
     * Makes a list.
     *
     * @param name the component's name; the sentences are named {@code name.0}, {@code name.1} and so on
     */
    public ProblemLines(String name, ProblemText problemText) {
        this.problemText = problemText;
        panel.setName(name);
        panel.setOpaque(false);
        panel.setVisible(false);
    }

    /** Keeps the room of some lines, however much is said: what stands below does not move. More is scrolled in it. */
    public ProblemLines keepingRoom(int lines) {
        around = new KeptRoom(panel, lines);
        return this;
    }

    /** Returns the panel with the sentences, not visible while there are none unless its room is kept. */
    public JComponent panel() {
        return around;
    }

    /** Shows some problems in place of those before, what is said of several things once. */
    public void show(List<Problem> problems) {
        if (problems.equals(shown)) {
            return;
        }
        shown = List.copyOf(problems);
        panel.removeAll();
        Set<String> said = new HashSet<>();
        Stream.concat(
                        problems.stream().filter(Problem::isError),
                        problems.stream().filter(problem -> !problem.isError()))
                .filter(problem -> said.add(problemText.say(problem)))
                .forEach(this::add);
        panel.setVisible(!problems.isEmpty());
        panel.revalidate();
        panel.repaint();
    }

    private void add(Problem problem) {
        WrappedText sentence = new WrappedText(
                panel.getName() + "." + panel.getComponentCount(), problem.isError() ? "fieldError" : "fieldWarning");
        sentence.setText((problem.isError() ? ERROR_SIGN : DOUBT_SIGN) + problemText.say(problem));
        panel.add(sentence, "wmin 0");
    }
}
