package porebench.desk.meter;

import java.awt.CardLayout;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Asker;
import porebench.desk.DeskModel;
import porebench.desk.Looks;
import porebench.desk.NewerVersion;
import porebench.desk.Outcome;
import porebench.desk.Screen;
import porebench.desk.form.Commands;
import porebench.desk.form.History;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.record.MeterCalibration;
import porebench.record.id.MeterId;

/**
 * The page of one meter: its story, the form in which a calibration is entered or corrected, or what to do while there is no
 * meter.
 */
public final class MeterPage implements Screen {
    private static final String NONE = "none";
    private static final String STORY = "story";
    private static final String ENTRY = "entry";

    private final CardLayout layout = new CardLayout();
    private final JPanel cards = new JPanel(layout);
    private final DeskModel desk;
    private final MeterModel model;
    private final CalibrationModel draft;
    private final Texts texts;
    private final Action back;
    private final Action begin;
    private final Action correct;
    private final Action save;
    private final MeterPrinting printing;
    private final StoryPanel story;
    private final NewerVersion<MeterCalibration> newer;
    private final CalibrationPanel entry;
    private boolean isKeyboardWanted;

    /**
     * Makes the page.
     *
     * @param toRegister turns the window to the register of meters
     */
    public MeterPage(DeskModel desk, Runnable toRegister) {
        this(new MeterModel(desk), toRegister);
    }

    MeterPage(MeterModel model, Runnable toRegister) {
        this.desk = model.desk();
        this.model = model;
        this.draft = model.entry();
        this.texts = model.texts();
        back = Commands.of(texts.get("action.back"), toRegister);
        begin = Commands.of(texts.get("action.begin"), () -> enter(model::begin));
        correct = Commands.of(texts.get("action.correct"), () -> enter(model::correctChosen));
        save = Commands.of(texts.get("action.save.new"), this::save);
        printing = new MeterPrinting(model, this::component, this::tell);
        story = new StoryPanel(model, back, begin, correct, printing);
        newer = new NewerVersion<>(draft, this::component);
        entry = new CalibrationPanel(model, newer, save, Commands.of(texts.get("action.drop"), this::dropDraft));
        cards.setName("meter");
        cards.add(none(), NONE);
        cards.add(story.component(), STORY);
        cards.add(entry.component(), ENTRY);
        model.onChange(this::refresh);
        Looks.onOther(this::redrawPlots);
        refresh();
    }

    private JPanel none() {
        JPanel panel = new JPanel(new MigLayout("insets 24, fillx, wrap 1", "[grow,fill,0::]", "[]16[]"));
        panel.add(new WrappedText("meter.none", "quiet", texts.get("none")), "wmin 0");
        panel.add(Commands.button("meter.none.back", back), "growx 0");
        return panel;
    }

    private void enter(Runnable begun) {
        begun.run();
        entry.focusFirst();
    }

    private void tell(String words) {
        story.tell(words);
    }

    /** Asks nothing of the lab book, which may be closed by now: a theme can outlive the window. */
    private void redrawPlots() {
        if (draft.isOpen()) {
            entry.showResults();
        } else {
            story.showPlots();
        }
    }

    private void refresh() {
        begin.setEnabled(model.story().isPresent());
        correct.setEnabled(model.chosen().isPresent());
        save.setEnabled(draft.isOpen() && (draft.isNew() || draft.history().isChanged()));
        Commands.say(
                save,
                newer.act(draft.base()
                        .map(version -> texts.get("action.save.version", Integer.toString(version.number() + 1)))
                        .orElseGet(() -> texts.get("action.save.new"))));
        printing.refresh();
        if (model.story().isEmpty()) {
            layout.show(cards, NONE);
        } else if (draft.isOpen()) {
            entry.refresh();
            layout.show(cards, ENTRY);
        } else {
            story.refresh();
            layout.show(cards, STORY);
        }
        takeKeyboard();
    }

    /** Looks at a meter, or at the calibration of it that was begun and not saved. */
    public void open(MeterId meter) {
        entry.finishTyping();
        draft.leave();
        model.open(meter);
        model.story().ifPresent(draft::goOn);
        refresh();
    }

    @Override
    public JComponent component() {
        return cards;
    }

    /** Takes the keyboard where a calibration is typed, else on those that are kept; once they have been read. */
    @Override
    public void focus() {
        isKeyboardWanted = true;
        takeKeyboard();
    }

    private void takeKeyboard() {
        if (isKeyboardWanted && model.story().isPresent()) {
            isKeyboardWanted = false;
            if (draft.isOpen()) {
                entry.focusFirst();
            } else {
                story.focus();
            }
        }
    }

    @Override
    public void finishTyping() {
        entry.finishTyping();
    }

    @Override
    public void dropDraft() {
        entry.finishTyping();
        if (draft.isOpen()) {
            draft.close();
        }
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(draft.history());
    }

    /** Keeps the draft; a correction is asked why, and what must be corrected is shown. */
    @Override
    public void save() {
        entry.finishTyping();
        if (draft.isOpen()) {
            newer.save(this::saveNewest);
        }
    }

    private void saveNewest() {
        boolean isGood = draft.trySaving();
        refresh();
        Asker asker = desk.tools().asker();
        if (!isGood || asker.person(component()).isEmpty()) {
            return;
        }
        String id = draft.typedName();
        Optional<String> why = draft.isNew()
                ? Optional.of(texts.get("save.first"))
                : asker.reason(
                        component(),
                        texts.get("save.reason.title", id),
                        texts.get("save.reason.question"),
                        texts.get("save.reason.act"));
        why.ifPresent(reason -> keep(asker, id, reason));
    }

    private void keep(Asker asker, String id, String why) {
        draft.save(
                why,
                Outcome.of(
                        refused -> {
                            if (refused.isEmpty()) {
                                model.lookAt(id);
                            } else {
                                asker.problems(component(), texts.get("save.refused.title"), refused);
                            }
                        },
                        failure -> asker.failure(component(), texts.get("save.doing", id), failure)));
    }
}
