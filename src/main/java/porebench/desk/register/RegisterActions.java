package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.CardsNow;
import porebench.desk.DeskModel;
import porebench.desk.ListOut;
import porebench.desk.Question;
import porebench.desk.form.Commands;
import porebench.evidence.RegisterRow;
import porebench.evidence.paper.RegisterList;
import porebench.method.Texts;
import porebench.port.CardBatch;
import porebench.port.OutputFile;
import porebench.port.OutputRefused;
import porebench.port.RegisterTable;

/** What can be done with the register as it is on view: print it, and write it into a file. */
final class RegisterActions {
    final Action print;
    final Action save;
    final Action cards;

    private final DeskModel desk;
    private final RegisterModel model;
    private final Texts texts;
    private final JComponent page;
    private final Supplier<List<RegisterRow>> shown;
    private final Consumer<String> told;
    private final ListOut out;
    private final ListOut.Words words;

    /**
     * Makes the actions.
     *
     * @param page the page, for dialogs to stand over
     * @param shown the lines on view, in their order
     * @param told takes what was done, in words
     */
    RegisterActions(
            DeskModel desk,
            RegisterModel model,
            JComponent page,
            Supplier<List<RegisterRow>> shown,
            Consumer<String> told) {
        this.desk = desk;
        this.model = model;
        this.texts = model.texts();
        this.page = page;
        this.shown = shown;
        this.told = told;
        this.out = new ListOut(desk, page, told);
        this.words = new ListOut.Words(
                texts.get("register.doing.print"),
                texts.get("register.printed"),
                texts.get("register.not-printed"),
                texts.get("register.save.title"),
                texts.get("register.kind.pdf"),
                texts.get("register.kind.csv"),
                file -> texts.get("register.doing.save", file),
                file -> texts.get("register.saved", file));
        print = Commands.of(texts.get("register.print"), () -> list(list -> out.print(leaf(list))));
        save = Commands.of(texts.get("register.save"), () -> list(list -> out.save(leaf(list))));
        cards = Commands.of(texts.get("cards.action"), this::cards);
    }

    /** Makes the list of what is on view now; how far the lab book reaches is read beside the event thread. */
    private void list(Consumer<RegisterList> then) {
        List<RegisterRow> rows = shown.get();
        desk.ask(
                new Question.HeadOfBook(),
                head -> desk.ask(new CardsNow(), found -> then.accept(model.list(rows, found.alarms(), head))));
    }

    /** Asks of which mixes cards are wanted, where to, and makes them. */
    private void cards() {
        CardsModel wanted = new CardsModel(texts, desk.rows(), shown.get());
        Optional<String> person = desk.tools().asker().person(page);
        if (person.isEmpty() || !new CardsDialog(wanted, desk.tools().problemText()).ask(page)) {
            return;
        }
        desk.tools()
                .asker()
                .fileToWrite(
                        page,
                        texts.get("cards.title"),
                        texts.get("cards.file", desk.tools().today().toString()))
                .ifPresent(file -> make(wanted, wanted.wish(desk.tools().now(), person.get()), file));
    }

    private void make(CardsModel wanted, CardBatch.Wish wish, OutputFile file) {
        CardBatch batch =
                new CardBatch(desk.book(), desk.tools().press(), desk.tools().locale());
        String path = file.path().toString();
        String doing = texts.get("cards.doing", path);
        desk.tools()
                .tasks()
                .run(
                        doing,
                        progress -> batch.toFile(wish, file, progress),
                        answer -> {
                            desk.refresh();
                            told.accept(answer.value()
                                    .map(made -> wanted.made(wish, made, path))
                                    .orElseGet(() -> texts.get("cards.refused")));
                            if (!answer.problems().isEmpty()) {
                                boolean isMade = answer.value().isPresent();
                                desk.tools()
                                        .asker()
                                        .problems(
                                                page,
                                                texts.get(isMade ? "cards.left-out" : "cards.refused"),
                                                answer.problems());
                            }
                        },
                        failure -> {
                            if (failure instanceof CancellationException) {
                                told.accept(texts.get("cards.ended"));
                            } else if (failure instanceof OutputRefused refused) {
                                told.accept(texts.get("cards.refused"));
                                desk.tools().asker().problems(page, texts.get("cards.refused"), refused.problems());
                            } else {
                                desk.tools().asker().failure(page, doing, failure);
                            }
                        });
    }

    private ListOut.Leaf leaf(RegisterList list) {
        return new ListOut.Leaf(list, Optional.of(() -> RegisterTable.of(list)), model.fileName(), words);
    }
}
