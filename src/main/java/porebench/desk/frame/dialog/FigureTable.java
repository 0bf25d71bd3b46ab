package porebench.desk.frame.dialog;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.util.List;
import java.util.Objects;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.SourceText;
import porebench.method.Texts;

/** The figures of the profile on view: what, value, unit, mark, clause; the value of an own copy can be typed over. */
final class FigureTable {
    private static final int SHOWN_ROWS = 11;

    private final ProfileModel model;
    private final FigureWords words;
    private final RowTable<FigureName> table;

    FigureTable(ProfileModel model, Texts texts, ProblemText problemText) {
        this.model = model;
        this.words = new FigureWords(texts);
        SourceText sources = SourceText.in(texts.locale());
        table = new RowTable<>(
                "figures",
                texts.get("profile.title"),
                List.of(
                        new ShownColumn<>(
                                texts.get("profile.column.what"), 290, name -> texts.get(ProfileModel.wordsOf(name))),
                        new ShownColumn<>(texts.get("profile.column.value"), 80, this::value)
                                .edited(name -> model.isOwn(), this::value, (name, typed) -> {
                                    model.change(name, words.keep(name, typed));
                                    return true;
                                })
                                .problems(this::problems, problemText),
                        new ShownColumn<>(texts.get("profile.column.unit"), 150, words::unit),
                        new ShownColumn<>(
                                texts.get("profile.column.mark"),
                                100,
                                name -> texts.get("mark." + figure(name).mark().symbol())),
                        new ShownColumn<>(
                                texts.get("profile.column.clause"),
                                400,
                                name -> sources.say(figure(name).clause()))));
        table.setColumnSelectionAllowed(false);
    }

    private Figure figure(FigureName name) {
        return Objects.requireNonNull(model.figures().get(name));
    }

    private String value(FigureName name) {
        return words.show(name, figure(name).value());
    }

    private List<Problem> problems(FigureName name) {
        return model.isOwn()
                ? name.check(figure(name).value()).map(words::named).stream().toList()
                : List.of();
    }

    JComponent component() {
        JScrollPane scroll = table.filtered();
        int width = table.getPreferredSize().width + UIScale.scale(20);
        scroll.setPreferredSize(new Dimension(width, (SHOWN_ROWS + 1) * table.getRowHeight()));
        return scroll;
    }

    void refresh() {
        table.show(List.of(FigureName.values()));
    }
}
