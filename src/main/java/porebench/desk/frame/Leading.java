package porebench.desk.frame;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.desk.Question;
import porebench.desk.custody.CardsPage;
import porebench.desk.frame.dialog.LaboratoryDialog;
import porebench.desk.frame.start.FirstStep;
import porebench.desk.frame.start.FirstStepsPage;
import porebench.evidence.intake.Sheet;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.Trial;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** Leads from the list of first steps to where each is done, and from a page to the one import. */
final class Leading implements FirstStepsPage.Ways {
    private final WorkbenchFrame window;

    Leading(WorkbenchFrame window) {
        this.window = window;
    }

    /** Selects the mix of a trial, and goes on with the trial. */
    static void toTrial(DeskModel desk, TrialId trialId, Consumer<Trial> then) {
        desk.ask(
                new Question.One<>(Trial.class, trialId.text()),
                found -> found.map(Version::value)
                        .ifPresent(trial -> desk.select(trial.mixId(), () -> then.accept(trial))));
    }

    @Override
    public void go(FirstStep step) {
        Pages pages = window.pages();
        switch (step) {
            case LABORATORY -> new LaboratoryDialog(window.desk(), window.texts()).ask(window.content());
            case METER -> pages.named("meters").ifPresent(this::begin);
            case CALIBRATION ->
                window.desk().meters().stream()
                        .findFirst()
                        .ifPresent(
                                meter -> window.openMeter(meter.meter().value().id()));
            case SOURCES -> pages.named("sources").ifPresent(this::begin);
            case MIX -> window.beginMix();
            case TRIAL -> {
                if (window.desk().selected().isEmpty()) {
                    window.desk().rows().stream()
                            .findFirst()
                            .ifPresent(row -> window.desk().select(row.mixId(), () -> window.turnTo(pages.trials())));
                } else {
                    window.turnTo(pages.trials());
                }
            }
        }
    }

    /** Turns to a register and into the first field of a new entry, once the page has come to rest. */
    private void begin(Page page) {
        window.turnTo(page);
        SwingUtilities.invokeLater(() -> SwingUtilities.invokeLater(page::beginNew));
    }

    @Override
    public void choose(JComponent over, Taking taking) {
        window.work().commands().importCsv(taking);
    }

    @Override
    public void take(JComponent over, Sheet<Kept> pasted) {
        window.work().commands().take(pasted);
    }

    @Override
    public void readings(MixId mix) {
        window.turnTo(window.pages().readings());
        window.pages().readings().page().show(mix);
    }

    @Override
    public void reading(FieldReading reading) {
        window.turnTo(window.pages().readings());
        window.pages().readings().page().show(reading);
    }

    @Override
    public void openCards(List<String> cards) {
        window.pages().named("cards").ifPresent(page -> {
            window.turnTo(page);
            if (page.page() instanceof CardsPage shown) {
                shown.show(cards);
            }
        });
    }

    @Override
    public void away() {
        window.turnTo(window.pages().steps().get(0));
    }
}
