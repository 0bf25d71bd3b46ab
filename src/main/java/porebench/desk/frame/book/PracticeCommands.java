package porebench.desk.frame.book;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Tools;
import porebench.desk.form.Days;
import porebench.evidence.practice.Planted;
import porebench.evidence.practice.PracticeRun;
import porebench.method.Answer;
import porebench.method.Texts;
import porebench.method.simulate.Fault;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** What can be done in a training book besides: have trials simulated, and be told what was planted in them. */
public final class PracticeCommands {
    private final DeskModel desk;
    private final Tools tools;
    private final Texts texts;
    private final JComponent over;
    private final Turning turning;
    private final Consumer<TrialId> openTrial;

    /**
     * Makes the commands.
     *
     * @param openTrial turns the window to a trial
     */
    PracticeCommands(DeskModel desk, Texts texts, JComponent over, Turning turning, Consumer<TrialId> openTrial) {
        this.desk = desk;
        this.tools = desk.tools();
        this.texts = texts;
        this.over = over;
        this.turning = turning;
        this.openTrial = openTrial;
    }

    private Optional<MixId> mix(String title) {
        Optional<MixId> mix = desk.selected();
        if (mix.isEmpty()) {
            tools.asker().tell(over, title, texts.get("practice.no-mix"));
        }
        return mix;
    }

    private PracticeModel model(LabBook book) {
        return new PracticeModel(book, LocalDateTime.ofInstant(tools.clock().instant(), tools.zone()));
    }

    /** Has trials of the selected mix simulated, and turns to the first. */
    public void simulate() {
        String title = texts.get("practice.title");
        if (!desk.isTraining()) {
            return;
        }
        turning.leave(() -> mix(title).ifPresent(mixId -> {
            PracticeModel model = model(desk.book());
            work(texts.get("practice.doing", mixId.text()), model::meters, meters -> ask(title, model, mixId, meters));
        }));
    }

    private void ask(String title, PracticeModel model, MixId mixId, List<PracticeModel.PracticeMeter> meters) {
        if (meters.isEmpty()) {
            tools.asker().tell(over, title, texts.get("practice.no-meter"));
            return;
        }
        new PracticeDialog(texts, tools.problemText())
                .ask(over, mixId, meters)
                .filter(wish -> tools.asker().person(over).isPresent())
                .ifPresent(wish -> work(
                        texts.get("practice.doing", mixId.text()),
                        () -> model.simulated(wish),
                        answer -> keep(title, answer)));
    }

    private void keep(String title, Answer<List<Draft>> answer) {
        if (answer.value().isEmpty()) {
            tools.asker().problems(over, title, answer.problems());
            return;
        }
        List<Draft> drafts = answer.value().get();
        desk.keep(drafts, texts.get("practice.why"), refused -> {
            if (refused.isEmpty()) {
                PracticeModel.firstTrial(drafts).ifPresent(openTrial);
            } else {
                tools.asker().problems(over, title, refused);
            }
        });
    }

    /** Tells what was planted in the simulated trials of the selected mix. */
    public void tellPlanted() {
        String title = texts.get("practice.planted.title");
        if (desk.isTraining()) {
            mix(title).ifPresent(mixId -> {
                PracticeModel model = model(desk.book());
                work(
                        texts.get("practice.planted.doing", mixId.text()),
                        () -> model.planted(mixId),
                        runs -> tools.asker().tell(over, title, words(mixId, runs)));
            });
        }
    }

    private String words(MixId mixId, List<PracticeModel.Told> runs) {
        if (runs.isEmpty()) {
            return texts.get("practice.planted.none", mixId.text());
        }
        String truth = runs.stream().anyMatch(told -> told.run().isPresent())
                ? texts.get(
                                "practice.planted.truth",
                                mixId.text(),
                                tools.numbers().show(PracticeRun.trueFactorPercent(mixId), 2))
                        + "\n\n"
                : "";
        return truth + runs.stream().map(told -> words(mixId, told)).collect(Collectors.joining("\n\n"));
    }

    private String words(MixId mixId, PracticeModel.Told told) {
        Trial first = told.trials().get(0);
        String head = texts.get(
                "practice.planted.run",
                first.id().text(),
                told.trials().get(told.trials().size() - 1).id().text(),
                Days.show(first.testedAt().toLocalDate()),
                first.meterId().text());
        return head + " "
                + told.run().map(run -> what(run.planted(mixId))).orElse(texts.get("practice.planted.unknown"));
    }

    private String what(Planted planted) {
        return planted.faults().stream()
                .findFirst()
                .map(fault -> texts.get(
                        "practice.planted.fault",
                        fault(texts, fault),
                        planted.trials().stream().map(TrialId::text).collect(Collectors.joining(", "))))
                .orElse(texts.get("practice.planted.nothing"));
    }

    static String fault(Texts texts, Fault fault) {
        return texts.get("practice.fault." + fault.symbol());
    }

    private <T> void work(String doing, Callable<T> work, Consumer<T> done) {
        tools.tasks().run(doing, work, done, failure -> tools.asker().failure(over, doing, failure));
    }
}
