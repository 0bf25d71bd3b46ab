package porebench.desk.frame.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Choices;
import porebench.desk.form.Form;
import porebench.desk.frame.dialog.AskDialog;
import porebench.evidence.practice.PracticeRun;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.method.simulate.Fault;
import porebench.record.id.MixId;

/** Asks on which meter how many trials are to be simulated, and what is to go wrong. */
final class PracticeDialog {
    private static final int USUAL_TRIALS = 6;

    private final Texts texts;
    private final Form form;
    private final JComboBox<Integer> faulty;

    /** What is to go wrong: nothing, what chance draws, or a fault. */
    private record Choice(boolean byLot, Optional<Fault> fault) {}

    PracticeDialog(Texts texts, ProblemText problemText) {
        this.texts = texts;
        this.form = new Form(problemText);
        this.faulty = Choices.of("faulty", List.of(), count -> Integer.toString(count), count -> {});
    }

    /** Returns what the person wants; empty when they thought better of it. */
    Optional<PracticeModel.Wish> ask(JComponent over, MixId mixId, List<PracticeModel.PracticeMeter> meters) {
        JComboBox<PracticeModel.PracticeMeter> meter = Choices.of("meter", meters, this::words, chosen -> {});
        JComboBox<Choice> fault = Choices.of("fault", choices(), this::words, this::offerFaulty);
        JComboBox<Integer> trials = Choices.of(
                "trials",
                IntStream.rangeClosed(1, PracticeRun.MOST_TRIALS).boxed().toList(),
                count -> Integer.toString(count),
                this::fillFaulty);
        form.add("mix", texts.get("practice.mix"), new JLabel(mixId.text()), "");
        form.add("meter", texts.get("practice.meter"), meter, "");
        form.add("trials", texts.get("practice.trials"), trials, "");
        form.add("fault", texts.get("practice.fault"), fault, "");
        form.add("faulty", texts.get("practice.faulty"), faulty, "");
        trials.setSelectedItem(USUAL_TRIALS);
        offerFaulty(new Choice(true, Optional.empty()));
        JPanel content = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]14[]"));
        content.add(AskDialog.text(texts.get("practice.words")));
        content.add(form.panel());
        AskDialog dialog = new AskDialog(over, texts.get("practice.title"), content);
        JButton simulate = dialog.button("accept", texts.get("practice.action"));
        dialog.button("cancel", texts.get("ask.cancel"));
        simulate.setEnabled(true);
        if (dialog.ask() != 0) {
            return Optional.empty();
        }
        Choice choice = fault.getItemAt(fault.getSelectedIndex());
        return Optional.of(new PracticeModel.Wish(
                mixId,
                meter.getItemAt(meter.getSelectedIndex()).id(),
                trials.getItemAt(trials.getSelectedIndex()),
                choice.fault(),
                howMany(choice),
                texts.get("practice.operator"),
                seed -> texts.get("practice.remark", Long.toString(seed))));
    }

    private int howMany(Choice choice) {
        if (choice.byLot()) {
            return PracticeModel.BY_LOT;
        }
        return choice.fault()
                .map(any -> faulty.getItemAt(faulty.getSelectedIndex()))
                .orElse(0);
    }

    private static List<Choice> choices() {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(true, Optional.empty()));
        choices.add(new Choice(false, Optional.empty()));
        for (Fault fault : Fault.values()) {
            choices.add(new Choice(false, Optional.of(fault)));
        }
        return choices;
    }

    private String words(Choice choice) {
        return choice.fault()
                .map(fault -> PracticeCommands.fault(texts, fault))
                .orElse(texts.get(choice.byLot() ? "practice.fault.lot" : "practice.fault.none"));
    }

    private String words(PracticeModel.PracticeMeter meter) {
        String key = meter.isSound() ? "practice.meter.sound" : "practice.meter.doubtful";
        return texts.get(key, meter.id().text(), meter.type());
    }

    private void offerFaulty(Choice choice) {
        faulty.setEnabled(choice.fault().isPresent());
    }

    private void fillFaulty(int trials) {
        int before = Math.max(0, faulty.getSelectedIndex());
        faulty.removeAllItems();
        IntStream.rangeClosed(1, trials).forEach(faulty::addItem);
        faulty.setSelectedIndex(Math.min(before, trials - 1));
    }
}
