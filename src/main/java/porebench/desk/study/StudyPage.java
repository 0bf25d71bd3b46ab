package porebench.desk.study;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Asker;
import porebench.desk.DeskModel;
import porebench.desk.Looks;
import porebench.desk.PlotPanel;
import porebench.desk.Screen;
import porebench.desk.form.Form;
import porebench.desk.form.History;
import porebench.desk.form.OnView;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.port.OutputFile;

/** The page of studies, who and what varies: which study of which data, its verdict, its plots and its tables. */
public final class StudyPage implements Screen {
    private static final int SHARES_HEIGHT = 240;
    private static final int READINGS_HEIGHT = 320;
    private static final int MANDEL_HEIGHT = 380;
    private static final String CSV = ".csv";

    private final StudyModel model;
    private final Texts texts;
    private final TallPanel panel =
            new TallPanel(new MigLayout("insets 20 24 24 24, fillx, wrap 1, hidemode 3, gapy 10", "[grow,fill,0::]"));
    private final JComponent scrolled;
    private final StudyChoice choice;
    private final KeepPanel keeping;
    private final WrappedText verdict = new WrappedText("study.verdict", "h2");
    private final WrappedText problems = new WrappedText("study.problems", "fieldError");
    private final WrappedText howTo = new WrappedText("study.howTo", "");
    private final WrappedText remarks = new WrappedText("study.remarks", "");
    private final PlotPanel shares;
    private final PlotPanel readings;
    private final PlotPanel h;
    private final PlotPanel k;
    private final JPanel tables = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy 8", "[grow,fill,0::]"));
    private List<StudyShown.Table> shownTables = List.of();

    public StudyPage(DeskModel desk) {
        model = new StudyModel(desk);
        texts = model.texts();
        choice = new StudyChoice(model, this::open, this::saveForm, this::keep, this::chooseKept);
        keeping = new KeepPanel(model);
        shares = plot("shares", SHARES_HEIGHT, texts.get("plot.shares"));
        readings = plot("readings", READINGS_HEIGHT, texts.get("plot.readings"));
        h = plot("h", MANDEL_HEIGHT, texts.get("plot.h"));
        k = plot("k", MANDEL_HEIGHT, texts.get("plot.k"));
        tables.setOpaque(false);
        panel.add(Form.heading(texts.get("page.title"), "h1"));
        panel.add(choice.component(), "wmin 0");
        panel.add(keeping.component(), "wmin 0, growx 0");
        panel.add(verdict, "wmin 0, gaptop 6");
        panel.add(problems, "wmin 0");
        panel.add(howTo, "wmin 0");
        panel.add(remarks, "wmin 0");
        panel.add(shares.component(), "wmin 0, gaptop 8");
        panel.add(readings.component(), "wmin 0, gaptop 8");
        panel.add(h.component(), "wmin 0, gaptop 8");
        panel.add(k.component(), "wmin 0, gaptop 8");
        panel.add(tables, "wmin 0");
        scrolled = panel.scrolled();
        scrolled.setName("studies.page");
        Looks.onChange(this::show);
        model.onChange(this::show);
        model.keeping().history().onChange(choice::refresh);
        model.onFailure(failed(texts.get("kept.reading")));
        show();
        // A study can take a while: it is made for somebody who looks at it.
        OnView.each(scrolled, model::update);
        desk.onChange(() -> {
            if (scrolled.isShowing()) {
                model.update();
            }
        });
    }

    @Override
    public JComponent component() {
        return scrolled;
    }

    @Override
    public void dropDraft() {
        keeping.drop();
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(model.keeping().history());
    }

    private PlotPanel plot(String name, int height, String title) {
        return new PlotPanel(
                model.desk().tools(),
                name,
                height,
                new PlotPanel.Words(title, () -> model.pictureName(name), model::subject, model.desk()::isTraining));
    }

    /** Begins to keep the study on view; what was typed of another one is found again with that. */
    private void keep() {
        keeping.begin();
        choice.refresh();
    }

    /** Keeps what somebody was about to keep, also when another study is on view, and waits until it is kept. */
    @Override
    public void save() {
        model.keeping().turnBack();
        if (model.keeping().isOpen()) {
            keeping.saveToTheEnd();
        }
    }

    /** Shows a kept study, or none; what was typed of the one before is found again with that. */
    private void chooseKept(Optional<String> id) {
        id.ifPresentOrElse(model::showKept, model::showNone);
        choice.refresh();
    }

    private Asker asker() {
        return model.desk().tools().asker();
    }

    private void open() {
        asker().fileToOpen(panel, texts.get("open.title"), CSV)
                .ifPresent(file -> model.open(file, failed(texts.get("reading"))));
    }

    private void saveForm() {
        Optional<OutputFile> file = asker().fileToWrite(panel, texts.get("form.title"), model.formName());
        file.ifPresent(form -> model.saveForm(form, failed(texts.get("form.doing"))));
    }

    private Consumer<Exception> failed(String doing) {
        return failure -> asker().failure(panel, doing, failure);
    }

    private void show() {
        choice.refresh();
        keeping.refresh();
        problems.say(String.join("\n", model.problems()));
        Optional<StudyShown> shown = model.shown();
        verdict.say(shown.map(StudyShown::verdict).orElse(""));
        howTo.say(shown.isPresent() ? "" : model.howTo());
        remarks.say(shown.map(known -> String.join("\n", known.remarks())).orElse(""));
        show(shares, shown.flatMap(StudyShown::shares), data -> shares.view().show(data, Looks.now()));
        show(
                readings,
                shown.flatMap(StudyShown::readings),
                data -> readings.view().show(data, Looks.now()));
        show(h, shown.flatMap(StudyShown::h), data -> h.view().show(data, Looks.now()));
        show(k, shown.flatMap(StudyShown::k), data -> k.view().show(data, Looks.now()));
        show(shown.map(StudyShown::tables).orElse(List.of()));
        panel.revalidate();
        panel.repaint();
    }

    private static <T> void show(PlotPanel plot, Optional<T> data, Consumer<T> shown) {
        plot.component().setVisible(data.isPresent());
        data.ifPresent(shown);
    }

    private void show(List<StudyShown.Table> now) {
        if (now.equals(shownTables)) {
            return;
        }
        shownTables = now;
        tables.removeAll();
        for (StudyShown.Table table : now) {
            tables.add(Form.heading(table.title(), "h2"), "gaptop 10, wmin 0");
            tables.add(FigureGrid.of(table), "wmin 0");
        }
    }
}
