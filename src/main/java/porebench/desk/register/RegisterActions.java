package porebench.desk.register;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.Asker;
import porebench.desk.CardsNow;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.WithoutPrinter;
import porebench.desk.form.Commands;
import porebench.desk.form.UnitSystem;
import porebench.evidence.RegisterRow;
import porebench.evidence.paper.RegisterList;
import porebench.method.Texts;
import porebench.port.CardBatch;
import porebench.port.OutputFile;
import porebench.port.OutputRefused;
import porebench.port.Paper;
import porebench.port.RegisterTable;

/** What can be done with the register as it is on view: print it, and write it into a file. */
final class RegisterActions {
    private static final String PDF = "pdf";
    private static final String CSV = "csv";

    final Action print;
    final Action save;
    final Action cards;

    private final DeskModel desk;
    private final RegisterModel model;
    private final Texts texts;
    private final JComponent page;
    private final Supplier<List<RegisterRow>> shown;
    private final Consumer<String> told;

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
        print = Commands.of(texts.get("register.print"), () -> list(this::print));
        save = Commands.of(texts.get("register.save"), () -> list(this::save));
        cards = Commands.of(texts.get("cards.action"), this::cards);
    }

    /** Makes the list of what is on view now; how far the lab book reaches is read beside the event thread. */
    private void list(Consumer<RegisterList> then) {
        List<RegisterRow> rows = shown.get();
        desk.ask(
                new Question.HeadOfBook(),
                head -> desk.ask(new CardsNow(), found -> then.accept(model.list(rows, found.alarms(), head))));
    }

    private Paper paper() {
        return desk.units() == UnitSystem.US ? Paper.LETTER : Paper.A4;
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

    private void print(RegisterList list) {
        Paper paper = paper();
        Locale locale = desk.tools().locale();
        String doing = texts.get("register.doing.print");
        desk.tools()
                .tasks()
                .run(
                        doing,
                        progress -> desk.tools().press().print(list, paper, locale, progress),
                        printed -> told.accept(texts.get(printed ? "register.printed" : "register.not-printed")),
                        failure -> WithoutPrinter.tell(desk.tools(), page, doing, failure, () -> save(list)));
    }

    private void save(RegisterList list) {
        desk.tools()
                .asker()
                .fileToWrite(
                        page,
                        texts.get("register.save.title"),
                        model.fileName() + "." + PDF,
                        List.of(
                                new Asker.Kind(PDF, texts.get("register.kind.pdf")),
                                new Asker.Kind(CSV, texts.get("register.kind.csv"))))
                .ifPresent(file -> write(list, file));
    }

    private void write(RegisterList list, OutputFile file) {
        Paper paper = paper();
        Locale locale = desk.tools().locale();
        String doing = texts.get("register.doing.save", file.path().toString());
        desk.tools()
                .tasks()
                .run(
                        doing,
                        () -> {
                            if (Asker.Kind.endingOf(file.path()).equals(CSV)) {
                                desk.tools().sheets().writeTable(file, RegisterTable.of(list));
                            } else {
                                desk.tools().press().write(list, paper, locale, file);
                            }
                            return file.path().toString();
                        },
                        written -> told.accept(texts.get("register.saved", written)),
                        failure -> desk.tools().asker().failure(page, doing, failure));
    }
}
