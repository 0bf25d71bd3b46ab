package porebench.desk.study;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import porebench.desk.DeskModel;
import porebench.evidence.intake.Sheet;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.evidence.study.LayeredReadings;
import porebench.evidence.study.TrialLayer;
import porebench.evidence.study.ValueRow;
import porebench.method.Texts;
import porebench.port.DataTable;
import porebench.port.OutputFile;
import porebench.record.KeptStudy;
import porebench.record.KeptStudy.Layout;
import porebench.record.book.LabBook;
import porebench.record.book.Version;

/** The Studies screen without its window: which study, of which data, and what it says. */
final class StudyModel {
    /** How many layers of the lab book can be chosen. */
    static final int LAYERS = 4;

    /** What a blank form of layers has for columns; a laboratory puts its own in their place. */
    private static final List<String> EXAMPLE_LAYERS = List.of("mix", "determination", "operator");

    private final DeskModel desk;
    private final Texts texts;
    private final StudyComputing computing;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Map<Layout, Opened> files = new EnumMap<>(Layout.class);
    private final KeptStudies kept;
    private final KeepModel keeping;
    private final List<Optional<TrialLayer>> layers = new ArrayList<>(List.of(
            Optional.of(TrialLayer.MIX),
            Optional.of(TrialLayer.DETERMINATION),
            Optional.of(TrialLayer.OPERATOR),
            Optional.empty()));
    private Layout kind = Layout.LAYERS;
    private boolean fromBook = true;
    private boolean withInteraction = true;
    private boolean crossed;
    private StudyComputing.Said said = StudyComputing.Said.NOTHING;
    private List<Object> computed = List.of();
    private LabBook book;

    StudyModel(DeskModel desk) {
        this.desk = desk;
        this.texts = Texts.of("porebench.desk.study.study", desk.tools().locale());
        this.computing =
                new StudyComputing(texts, desk.tools().numbers(), desk.tools().problemText());
        this.book = desk.book();
        this.kept = new KeptStudies(desk, texts, this::keptRead);
        this.keeping = new KeepModel(this, kept);
    }

    DeskModel desk() {
        return desk;
    }

    Texts texts() {
        return texts;
    }

    Layout kind() {
        return kind;
    }

    void choose(Layout other) {
        kind = other;
        update();
    }

    /** Returns whether the study takes its data from the lab book rather than from a file. */
    boolean isFromBook() {
        return kind == Layout.LAYERS && fromBook;
    }

    void takeFromBook(boolean book) {
        fromBook = book;
        update();
    }

    boolean isWithInteraction() {
        return withInteraction;
    }

    void keepInteraction(boolean apart) {
        withInteraction = apart;
        update();
    }

    /** Returns whether layers cross one another, rather than being groups within groups. */
    boolean isCrossed() {
        return crossed;
    }

    void cross(boolean oneAnother) {
        crossed = oneAnother;
        update();
    }

    /** Returns what is chosen for each layer, the outermost first. */
    List<Optional<TrialLayer>> layers() {
        return List.copyOf(layers);
    }

    void chooseLayer(int place, Optional<TrialLayer> layer) {
        layers.set(place, layer);
        update();
    }

    /** Returns the readings the study is made of, if a file was opened or a kept study chosen. */
    Optional<Opened> opened() {
        return isFromBook() ? Optional.empty() : Optional.ofNullable(files.get(kind));
    }

    /** Returns the file the study is made of, if one was opened. */
    Optional<Path> file() {
        return opened().flatMap(Opened::file);
    }

    /** Returns the keeping of the study on view. */
    KeepModel keeping() {
        return keeping;
    }

    /** Returns the kept studies of the kind that is chosen, the newest day first. */
    List<KeptStudies.Choice> kept() {
        return isFromBook() ? List.of() : kept.of(kind);
    }

    /** Says who is told when the kept studies could not be read. */
    void onFailure(Consumer<Exception> told) {
        kept.onFailure(told);
    }

    /** Shows a kept study of the kind that is chosen again. */
    void showKept(String id) {
        kept.find(id).ifPresent(version -> {
            keeping.leaveFor(id);
            show(version);
        });
    }

    /** Shows no study, neither a file nor a kept one. */
    void showNone() {
        keeping.leaveFor("");
        files.remove(kind);
        update();
        fire();
    }

    /** Shows the data that are not of the lab book's factors, of a kind. */
    void turnBackTo(Layout before) {
        kind = before;
        fromBook = before != Layout.LAYERS && fromBook;
        update();
    }

    /** A kept study on view is the newest version of it, whoever corrected it. */
    private void keptRead() {
        files.replaceAll((of, opened) -> opened.kept()
                .flatMap(
                        known -> kept.find(known.value().recordId()).filter(newest -> newest.number() > known.number()))
                .map(Opened::of)
                .orElse(opened));
        keeping.follow();
        compute();
        fire();
    }

    /** Shows a study as it is kept. */
    void show(Version<KeptStudy> version) {
        files.put(version.value().layout(), Opened.of(version));
        update();
    }

    /**
     * Reads a file and makes the study of it.
     *
     * @param failed takes what the file system did wrong
     */
    void open(Path file, Consumer<Exception> failed) {
        Layout of = kind;
        desk.tools()
                .tasks()
                .run(
                        texts.get("reading"),
                        () -> Opened.of(file, of, desk.tools().sheets().table(file, of.columns())),
                        opened -> {
                            files.put(of, opened);
                            fromBook = of != Layout.LAYERS && fromBook;
                            update();
                        },
                        failed);
    }

    /** Writes the blank form of the study. */
    void saveForm(OutputFile file, Consumer<Exception> failed) {
        Layout of = kind;
        desk.tools()
                .tasks()
                .run(
                        texts.get("form.doing"),
                        () -> {
                            desk.tools().sheets().writeTable(file, form(of));
                            return file;
                        },
                        written -> {},
                        failed);
    }

    /** Makes the study anew if what it rests on has changed. */
    void update() {
        if (book != desk.book()) {
            book = desk.book();
            files.values().removeIf(opened -> opened.kept().isPresent());
            keeping.close();
        }
        compute();
        if (!isFromBook()) {
            kept.follow();
        }
    }

    private void compute() {
        List<Object> restsOn = List.of(
                kind,
                isFromBook(),
                withInteraction,
                crossed,
                layers(),
                Optional.ofNullable(files.get(kind)),
                System.identityHashCode(desk.book()),
                desk.isTraining(),
                isFromBook() ? desk.standing().upTo() : 0);
        if (restsOn.equals(computed)) {
            return;
        }
        computed = restsOn;
        desk.tools().tasks().run(texts.get("computing"), work(), done -> take(restsOn, done), failure -> {
            if (!(failure instanceof CancellationException)) {
                throw new IllegalStateException("computing a study", failure);
            }
            computed = List.of();
            said = StudyComputing.Said.NOTHING;
            fire();
        });
    }

    /** What took long may be overtaken by what was asked later. */
    private void take(List<Object> restsOn, StudyComputing.Said done) {
        if (restsOn.equals(computed)) {
            said = done;
            fire();
        }
    }

    private Callable<StudyComputing.Said> work() {
        if (isFromBook()) {
            List<TrialLayer> chosen = layers.stream().flatMap(Optional::stream).toList();
            Optional<TrialLayer> twice = chosen.stream()
                    .filter(layer -> Collections.frequency(chosen, layer) > 1)
                    .findFirst();
            if (chosen.isEmpty() || twice.isPresent()) {
                String why = twice.map(layer -> texts.get("layers.twice", words(layer)))
                        .orElse(texts.get("layers.none"));
                return () -> StudyComputing.Said.wrong(why);
            }
            LaboratoryStanding standing = desk.standing();
            boolean isTraining = desk.isTraining();
            boolean isCrossed = crossed;
            return () -> computing.ofBook(
                    LayeredReadings.of(standing.everything(), chosen, this::words), isCrossed, isTraining);
        }
        Opened opened = files.get(kind);
        if (opened == null) {
            return () -> StudyComputing.Said.NOTHING;
        }
        Sheet<ValueRow> sheet = opened.sheet();
        boolean apart = withInteraction;
        boolean isCrossed = crossed;
        boolean isTraining = desk.isTraining();
        return switch (kind) {
            case OPERATORS -> () -> computing.operators(sheet, apart, isTraining);
            case LAYERS -> () -> computing.layers(sheet, isCrossed, isTraining);
            case LABORATORIES -> () -> computing.laboratories(sheet, isTraining);
        };
    }

    /** Returns what a layer is called. */
    String words(TrialLayer layer) {
        return texts.get("layer." + layer.name());
    }

    /** Returns what keeps the study from being made, and what is doubtful about its file. */
    List<String> problems() {
        return said.problems();
    }

    /** Returns what the study says; empty while there are no data to say it of. */
    Optional<StudyShown> shown() {
        return said.shown();
    }

    /** Returns how to lay out a file, while nothing is shown. */
    String howTo() {
        return texts.get(isFromBook() ? "howto.book" : "howto." + kind.name());
    }

    /** Returns the name of what the study is made of, for the title of a picture. */
    String subject() {
        return isFromBook()
                ? texts.get("subject.book")
                : opened().map(one -> one.words(texts)).orElse("");
    }

    /** Returns the name offered for the picture of a plot. */
    String pictureName(String plot) {
        String subject = opened().flatMap(Opened::kept)
                .map(version -> version.value().recordId().replaceAll("[^\\p{L}\\p{N}_.-]", "-"))
                .orElse(fileName(kind));
        return subject + "-" + plot + ".png";
    }

    /** Returns the name the blank form is saved under unless the person says otherwise. */
    String formName() {
        return fileName(kind) + ".csv";
    }

    private static String fileName(Layout kind) {
        return kind == Layout.OPERATORS ? "operators-and-samples" : kind.symbol();
    }

    /** Returns a blank form: the heading and nothing below. */
    private static DataTable form(Layout kind) {
        List<String> heading = new ArrayList<>(kind.columns().isEmpty() ? EXAMPLE_LAYERS : kind.columns());
        heading.add("value");
        return new DataTable(heading, List.of());
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void fire() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
