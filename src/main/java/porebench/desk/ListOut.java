package porebench.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.JComponent;
import porebench.evidence.paper.Printed;
import porebench.port.DataTable;
import porebench.port.OutputFile;
import porebench.port.Paper;

/** Puts a list that is on view on paper or into a file: asks where, works beside the event thread, and tells what became of it. */
public final class ListOut {
    private static final String PDF = "pdf";
    private static final String CSV = "csv";

    private final DeskModel desk;
    private final JComponent page;
    private final Consumer<String> told;

    /**
     * A list as it was on view.
     *
     * @param what what is printed
     * @param table makes the same as a table for a CSV file; empty where there is none
     * @param name the name of its file, without what follows the dot
     * @param words what is said meanwhile
     */
    public record Leaf(Printed what, Optional<Supplier<DataTable>> table, String name, Words words) {}

    /**
     * What is said of a list.
     *
     * @param printing what is being done while it is printed
     * @param printed that it was printed
     * @param notPrinted that it was not, because somebody stopped it
     * @param title over the question for a file
     * @param pdf what a PDF file is called there
     * @param csv what a CSV file is called there; not used where there is no table
     * @param saving what is being done while it is written to a file, by the file
     * @param saved that it was written, by the file
     */
    public record Words(
            String printing,
            String printed,
            String notPrinted,
            String title,
            String pdf,
            String csv,
            UnaryOperator<String> saving,
            UnaryOperator<String> saved) {}

    /**
     * Makes one.
     *
     * @param page the page, for dialogs to stand over
     * @param told takes what was done, in words
     */
    public ListOut(DeskModel desk, JComponent page, Consumer<String> told) {
        this.desk = desk;
        this.page = page;
        this.told = told;
    }

    /** Prints a list; where there is no printer, a PDF file is offered. */
    public void print(Leaf leaf) {
        Paper paper = desk.units().sheet();
        Locale locale = desk.tools().locale();
        Words words = leaf.words();
        desk.tools()
                .tasks()
                .run(
                        words.printing(),
                        progress -> desk.tools().press().print(leaf.what(), paper, locale, progress),
                        printed -> told.accept(printed ? words.printed() : words.notPrinted()),
                        failure ->
                                WithoutPrinter.tell(desk.tools(), page, words.printing(), failure, () -> save(leaf)));
    }

    /** Asks for a file and writes a list to it: a PDF file, or a CSV file where it is a table too. */
    public void save(Leaf leaf) {
        List<Asker.Kind> kinds =
                new ArrayList<>(List.of(new Asker.Kind(PDF, leaf.words().pdf())));
        leaf.table()
                .ifPresent(table -> kinds.add(new Asker.Kind(CSV, leaf.words().csv())));
        desk.tools()
                .asker()
                .fileToWrite(page, leaf.words().title(), leaf.name() + "." + PDF, kinds)
                .ifPresent(file -> write(leaf, file));
    }

    private void write(Leaf leaf, OutputFile file) {
        Paper paper = desk.units().sheet();
        Locale locale = desk.tools().locale();
        String doing = leaf.words().saving().apply(file.path().toString());
        Optional<Supplier<DataTable>> table =
                leaf.table().filter(any -> Asker.Kind.endingOf(file.path()).equals(CSV));
        desk.tools()
                .tasks()
                .run(
                        doing,
                        () -> {
                            if (table.isPresent()) {
                                desk.tools()
                                        .sheets()
                                        .writeTable(file, table.get().get());
                            } else {
                                desk.tools().press().write(leaf.what(), paper, locale, file);
                            }
                            return file.path().toString();
                        },
                        written -> told.accept(leaf.words().saved().apply(written)),
                        failure -> desk.tools().asker().failure(page, doing, failure));
    }
}
