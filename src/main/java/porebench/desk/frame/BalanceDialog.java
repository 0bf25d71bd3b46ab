package porebench.desk.frame;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Settings;
import porebench.desk.bench.BalancePattern;
import porebench.desk.bench.BalanceReading;
import porebench.desk.bench.BalanceSetting;
import porebench.desk.form.Form;
import porebench.desk.form.SpokenChoices;
import porebench.desk.form.Typing;
import porebench.desk.form.WrappedText;
import porebench.desk.frame.dialog.AskDialog;
import porebench.method.Texts;

/** Asks on which serial line the balance is and how it writes a mass; a line of it can be tried before anything is kept. */
final class BalanceDialog {
    private static final int COLUMNS = 48;

    private final Texts texts;
    private final Settings settings;
    private final JComboBox<String> place = new JComboBox<>();
    private final JComboBox<Integer> baud = new JComboBox<>();
    private final JTextField pattern = new JTextField(COLUMNS);
    private final JTextField example = new JTextField(COLUMNS);
    private final WrappedText says = new WrappedText("balance.says", "");
    private final JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[]12[grow,fill]"));

    BalanceDialog(Texts texts, Settings settings) {
        this.texts = texts;
        this.settings = settings;
    }

    /**
     * Asks.
     *
     * @param places the lines that there are now
     */
    void ask(JComponent over, List<String> places) {
        show(BalanceSetting.of(settings), places);
        AskDialog dialog = new AskDialog(over, texts.get("balance.title"), form);
        JButton keep = dialog.button("accept", texts.get("balance.use"));
        dialog.button("cancel", texts.get("ask.cancel"));
        dialog.closesOnlyIf(keep, () -> BalancePattern.parse(pattern.getText()).isPresent());
        if (dialog.ask() == 0) {
            new BalanceSetting(
                            String.valueOf(place.getEditor().getItem()).strip(),
                            baud.getItemAt(baud.getSelectedIndex()),
                            pattern.getText())
                    .keep(settings);
        }
    }

    private void show(BalanceSetting set, List<String> places) {
        place.setEditable(true);
        SpokenChoices.follow(place);
        SpokenChoices.follow(baud);
        Stream.concat(Stream.of(""), Stream.concat(places.stream(), Stream.of(set.place())))
                .distinct()
                .forEach(place::addItem);
        place.setSelectedItem(set.place());
        BalanceSetting.BAUDS.forEach(baud::addItem);
        baud.setSelectedItem(set.baud());
        pattern.setText(set.pattern());
        row("place", texts.get("balance.place"), place);
        row("baud", texts.get("balance.baud"), baud);
        row("pattern", texts.get("balance.pattern"), pattern);
        form.add(wrapped(new WrappedText("balance.groups", "quiet", texts.get("balance.groups"))), "skip 1, wrap");
        row("example", texts.get("balance.example"), example);
        form.add(wrapped(says), "skip 1, hmin 48, wrap");
        Typing.listen(pattern, this::tryOut);
        Typing.listen(example, this::tryOut);
        tryOut();
    }

    /** As wide as the fields from the beginning: a dialog takes its height from what its texts want then. */
    private static WrappedText wrapped(WrappedText text) {
        text.setColumns(COLUMNS);
        text.setSize(text.getPreferredSize().width, 1);
        return text;
    }

    private void row(String name, String words, JComponent field) {
        field.setName("balance." + name);
        form.add(Form.label(words, field));
        form.add(field, "wmin 0, wrap");
    }

    private void tryOut() {
        says.setText(said());
    }

    private String said() {
        Optional<BalancePattern> read = BalancePattern.parse(pattern.getText());
        if (read.isEmpty()) {
            return texts.get("balance.wrong-pattern");
        }
        if (example.getText().isBlank()) {
            return texts.get("balance.try");
        }
        BalanceReading reading = read.get().read(example.getText().strip());
        return switch (reading.kind()) {
            case MASS -> texts.get("balance.reads", reading.number(), reading.unit());
            case NOT_AT_REST -> texts.get("balance.moves");
            case NO_MASS -> texts.get("balance.reads-nothing");
        };
    }
}
