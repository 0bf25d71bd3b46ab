package porebench.desk.study;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import porebench.desk.DeskModel;
import porebench.desk.form.DraftModel;
import porebench.desk.form.FileNames;
import porebench.desk.form.TypedDraft;
import porebench.evidence.intake.Sheet;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.evidence.study.LayeredReadings;
import porebench.evidence.study.TrialLayer;
import porebench.evidence.study.ValueFile;
import porebench.evidence.study.ValueRow;
import porebench.method.Texts;
import porebench.port.DataTable;
import porebench.port.OutputFile;
import porebench.record.KeptStudy;
import porebench.record.KeptStudy.Layout;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.column.CellType;
import porebench.record.column.Column;

/** The Studies screen without its window: which study, of which data, and what it says. */
final class StudyModel extends DraftModel {
    private static final String LEAD = "study.";
    private static final String BOOK = "book";
    private static final String NO_LAYER = "none";

    static final Column<StudyShown, Layout> KIND = field("kind", CellType.choice(Layout.values(), Layout::name));
    /** Whether the data are the lab book's or those of a file. */
    static final Column<StudyShown, String> DATA =
            field("data", CellType.choice(List.of(BOOK, "file"), Function.identity()));
    /** The layers of the lab book that can be chosen, the outermost first. */
    static final List<Column<StudyShown, String>> LAYERS =
            IntStream.range(0, 4).mapToObj(StudyModel::layer).toList();
    /** Whether what an operator does with one sample is kept apart. */
    static final Column<StudyShown, Boolean> INTERACTION = field("interaction", CellType.yesNo());
    /** Whether layers cross one another, rather than being groups within groups. */
    static final Column<StudyShown, Boolean> CROSSED = field("crossed", CellType.yesNo());

    /** What a blank form of layers has for columns; a laboratory puts its own in their place. */
    private static final List<String> EXAMPLE_LAYERS = List.of("mix", "determination", "operator");

    private final DeskModel desk;
    private final StudyComputing computing;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Map<Layout, Opened> files = new EnumMap<>(Layout.class);
    private final KeptStudies kept;
    private final KeepModel keeping;
    private StudyComputing.Said said = StudyComputing.Said.NOTHING;
    private List<Object> computed = List.of();
    private LabBook book;

    StudyModel(DeskModel desk) {
        super(
                Texts.of("porebench.desk.study.study", desk.tools().locale()),
                LEAD,
                TypedDraft.BLANK
                        .with(KIND, Layout.LAYERS.name())
                        .with(DATA, BOOK)
                        .with(LAYERS.get(0), TrialLayer.MIX.name())
                        .with(LAYERS.get(1), TrialLayer.DETERMINATION.name())
                        .with(LAYERS.get(2), TrialLayer.OPERATOR.name())
                        .with(LAYERS.get(3), NO_LAYER)
                        .with(INTERACTION, true));
        this.desk = desk;
        this.computing =
                new StudyComputing(texts(), desk.tools().numbers(), desk.tools().problemText());
        this.book = desk.book();
        this.kept = new KeptStudies(desk, texts(), this::keptRead);
        this.keeping = new KeepModel(this, kept);
    }

    DeskModel desk() {
        return desk;
    }

    private static Column<StudyShown, String> layer(int place) {
        List<String> layers = Stream.concat(
                        Stream.of(NO_LAYER), Arrays.stream(TrialLayer.values()).map(TrialLayer::name))
                .toList();
        return field("layer." + place, CellType.choice(layers, Function.identity()));
    }

    private static <V> Column<StudyShown, V> field(String name, CellType<V> type) {
        return Column.any(LEAD + name, type, any -> Optional.empty());
    }

    // What is chosen; nothing of it is undone.

    @Override
    public void update(String label, TypedDraft changed) {
        history().restart(changed);
        update();
    }

    @Override
    public String key(Column<?, ?> column) {
        return LAYERS.contains(column) ? "layer" : column.field().substring(LEAD.length());
    }

    @Override
    public String tickWords(Column<?, ?> column) {
        return texts().get("label." + key(column));
    }

    @Override
    public String step(Column<?, ?> column) {
        return "";
    }

    Layout kind() {
        return Layout.valueOf(draft().text(KIND));
    }

    /** Returns whether the study takes its data from the lab book rather than from a file. */
    boolean isFromBook() {
        return kind() == Layout.LAYERS && draft().text(DATA).equals(BOOK);
    }

    /** Turns to a kind of study, of a file where it could be of the lab book. */
    private void turnToFileOf(Layout kind) {
        TypedDraft turned = draft().with(KIND, kind.name());
        history().restart(kind == Layout.LAYERS ? turned.with(DATA, "file") : turned);
    }

    /** Returns what is chosen for each layer, the outermost first. */
    private List<TrialLayer> layers() {
        return LAYERS.stream()
                .map(column -> draft().text(column))
                .filter(layer -> !layer.equals(NO_LAYER))
                .map(TrialLayer::valueOf)
                .toList();
    }

    /** Returns the readings the study is made of, if a file was opened or a kept study chosen. */
    Optional<Opened> opened() {
        return isFromBook() ? Optional.empty() : Optional.ofNullable(files.get(kind()));
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
        return isFromBook() ? List.of() : kept.of(kind());
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
        files.remove(kind());
        update();
        fire();
    }

    /** Shows the data that are not of the lab book's factors, of a kind. */
    void turnBackTo(Layout before) {
        turnToFileOf(before);
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
        Layout of = kind();
        desk.tools()
                .tasks()
                .run(
                        texts().get("reading"),
                        () -> Opened.of(file, of, desk.tools().sheets().table(file, of.columns())),
                        opened -> {
                            files.put(of, opened);
                            if (of == Layout.LAYERS) {
                                history().restart(draft().with(DATA, "file"));
                            }
                            update();
                        },
                        failed);
    }

    /** Writes the blank form of the study. */
    void saveForm(OutputFile file, Consumer<Exception> failed) {
        Layout of = kind();
        desk.tools()
                .tasks()
                .run(
                        texts().get("form.doing"),
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
            keeping.leave();
        }
        compute();
        keeping.goOn();
        if (!isFromBook()) {
            kept.follow();
        }
    }

    private void compute() {
        List<Object> restsOn = List.of(
                draft(),
                Optional.ofNullable(files.get(kind())),
                System.identityHashCode(desk.book()),
                desk.isTraining(),
                isFromBook() ? desk.standing().upTo() : 0);
        if (restsOn.equals(computed)) {
            return;
        }
        computed = restsOn;
        desk.tools().tasks().run(texts().get("computing"), work(), done -> take(restsOn, done), failure -> {
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
            List<TrialLayer> chosen = layers();
            Optional<TrialLayer> twice = chosen.stream()
                    .filter(layer -> Collections.frequency(chosen, layer) > 1)
                    .findFirst();
            if (chosen.isEmpty() || twice.isPresent()) {
                String why = twice.map(layer -> texts().get("layers.twice", words(layer)))
                        .orElse(texts().get("layers.none"));
                return () -> StudyComputing.Said.wrong(why);
            }
            LaboratoryStanding standing = desk.standing();
            boolean isTraining = desk.isTraining();
            boolean isCrossed = draft().isYes(CROSSED);
            return () -> computing.ofBook(
                    LayeredReadings.of(standing.everything(), chosen, this::words), isCrossed, isTraining);
        }
        Opened opened = files.get(kind());
        if (opened == null) {
            return () -> StudyComputing.Said.NOTHING;
        }
        Sheet<ValueRow> sheet = opened.sheet();
        boolean apart = draft().isYes(INTERACTION);
        boolean isCrossed = draft().isYes(CROSSED);
        boolean isTraining = desk.isTraining();
        return switch (kind()) {
            case OPERATORS -> () -> computing.operators(sheet, apart, isTraining);
            case LAYERS -> () -> computing.layers(sheet, isCrossed, isTraining);
            case LABORATORIES -> () -> computing.laboratories(sheet, isTraining);
        };
    }

    /** Returns what a layer is called. */
    String words(TrialLayer layer) {
        return texts().get("layer." + layer.name());
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
        return texts().get(isFromBook() ? "howto.book" : "howto." + kind().name());
    }

    /** Returns the name of what the study is made of, for the title of a picture. */
    String subject() {
        return isFromBook()
                ? texts().get("subject.book")
                : opened().map(one -> one.words(texts())).orElse("");
    }

    /** Returns the name offered for the picture of a plot. */
    String pictureName(String plot) {
        String subject = opened().flatMap(Opened::kept)
                .map(version -> FileNames.part(version.value().recordId()))
                .orElse(fileName(kind()));
        return subject + "-" + plot + ".png";
    }

    /** Returns the name the blank form is saved under unless the person says otherwise. */
    String formName() {
        return fileName(kind()) + ".csv";
    }

    private static String fileName(Layout kind) {
        return kind == Layout.OPERATORS ? "operators-and-samples" : kind.symbol();
    }

    /** Returns a blank form: the heading and nothing below. */
    private static DataTable form(Layout kind) {
        List<String> heading = new ArrayList<>(kind.columns().isEmpty() ? EXAMPLE_LAYERS : kind.columns());
        heading.add(ValueFile.VALUE);
        return new DataTable(heading, List.of());
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void fire() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
