package porebench.desk.mix;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.Form;
import porebench.desk.form.TwoVersions.Line;
import porebench.desk.form.WrappedText;
import porebench.desk.frame.dialog.CopyButton;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.evidence.RegisterRow;
import porebench.method.Texts;
import porebench.record.MixDesign;
import porebench.record.book.Version;

/** Asks for another mix and shows it beside the one on view. */
final class MixBesideDialog {
    private static final Dimension CHOICE = new Dimension(760, 170);
    private static final Dimension LINES = new Dimension(760, 260);

    private final MixModel model;
    private final DeskModel desk;
    private final Texts texts;
    private final Version<MixDesign> one;
    private final RowTable<RegisterRow> choice;
    private final RowTable<Line> lines;
    private final WrappedText meaning = new WrappedText("beside.meaning", "").keepingRoom(4);
    private final JPanel content =
            new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]4[]14[]4[grow,fill]10[]"));
    private Optional<MixBeside> beside = Optional.empty();

    MixBesideDialog(MixModel model, Version<MixDesign> one) {
        this.model = model;
        this.desk = model.desk();
        this.texts = model.texts();
        this.one = one;
        String id = one.value().id().text();
        choice = new RowTable<>(
                "beside.mixes",
                texts.get("beside.choose", id),
                List.of(
                        new ShownColumn<>(
                                texts.get("mix.id.plain"),
                                200,
                                row -> row.mixId().text()),
                        new ShownColumn<>(texts.get("mix.title.plain"), 520, RegisterRow::title)));
        lines = new RowTable<>(
                "beside.lines",
                texts.get("beside.lines"),
                List.of(
                        new ShownColumn<Line>(texts.get("beside.what"), 240, Line::name).wrapped(),
                        new ShownColumn<Line>(id, 240, Line::theirs).wrapped(),
                        new ShownColumn<Line>(this::otherName, 240, Line::yours).wrapped()));
        choice.show(desk.rows().stream()
                .filter(row -> !row.mixId().equals(one.value().id()))
                .toList());
        choice.onSelect(chosen -> chosen.ifPresent(this::compare));
        meaning.setFocusable(true);
        fill(id);
    }

    private void fill(String id) {
        content.add(label("beside.choose", choice, id));
        content.add(sized(choice.scrolled(), CHOICE));
        content.add(label("beside.lines", lines));
        content.add(sized(lines.scrolled(), LINES));
        content.add(meaning, "wmin 0, w " + LINES.width + "!, " + WrappedText.ROOM_KEPT);
    }

    private JLabel label(String key, JComponent of, String... values) {
        JLabel label = Form.heading(texts.get(key, values), "h3");
        label.setLabelFor(of);
        return label;
    }

    private static JScrollPane sized(JScrollPane scroll, Dimension size) {
        scroll.setPreferredSize(UIScale.scale(size));
        return scroll;
    }

    private String otherName() {
        return beside.map(MixBeside::otherName).orElse("");
    }

    private void compare(RegisterRow row) {
        desk.ask(
                new MixBeside.Of(row.mixId()),
                found -> found.ifPresent(other -> {
                    beside = Optional.of(MixBeside.of(model, one, other));
                    lines.show(beside.get().lines());
                    lines.getTableHeader().repaint();
                    lines.getColumnModel().getColumn(2).setHeaderValue(otherName());
                    meaning.setText(String.join("\n", beside.get().meaning()));
                }));
    }

    /** Returns what is on view as lines of a table, to be copied. */
    private String words() {
        return beside.map(both -> Stream.concat(
                                Stream.concat(
                                                Stream.of(new Line(
                                                        texts.get("beside.what"),
                                                        "",
                                                        both.oneName(),
                                                        both.otherName(),
                                                        false)),
                                                both.lines().stream())
                                        .map(line -> String.join("\t", line.name(), line.theirs(), line.yours())),
                                both.meaning().stream())
                        .collect(Collectors.joining("\n")))
                .orElse("");
    }

    void show(JComponent over) {
        CopyButton.read(over, texts.get("beside.title", one.value().id().text()), content, this::words, texts);
    }
}
