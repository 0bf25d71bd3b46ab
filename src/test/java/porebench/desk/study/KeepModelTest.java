package porebench.desk.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.BenchBook;
import porebench.desk.DeskModel;
import porebench.desk.HeldTasks;
import porebench.desk.form.TypedDraft;
import porebench.method.Problem;
import porebench.record.KeptStudy;
import porebench.record.KeptStudy.Layout;
import porebench.record.Laboratory;
import porebench.record.SampleStudies;
import porebench.record.book.Version;

/** A study read from a file is kept, shown again and corrected. */
class KeepModelTest {
    private static final String ROWS = "operator,sample,repeat,value\n"
            + "Ada,x,1,5.40\nAda,x,2,5.35\nAda,y,1,6.10\nAda,y,2,6.05\n"
            + "Bo,x,1,5.45\nBo,x,2,5.40\nBo,y,1,6.20\nBo,y,2,6.10\n";

    @TempDir
    Path folder;

    private final BenchBook bench = new BenchBook();
    private StudyModel model;
    private KeepModel keeping;

    @BeforeEach
    void begin() {
        model = new StudyModel(bench.desk);
        Chosen.choose(model, Layout.OPERATORS);
        keeping = model.keeping();
    }

    private void open(String name, String text) throws IOException {
        Path file = Files.writeString(folder.resolve(name), text);
        model.open(file, failure -> {
            throw new AssertionError(failure);
        });
    }

    private void type(TypedDraft draft) {
        keeping.history().update("typed", draft);
    }

    private List<Problem> keep(String why) {
        assertThat(keeping.tryKeeping()).as(keeping.problems().toString()).isTrue();
        List<Problem> refused = new ArrayList<>();
        keeping.keep(why, refused::addAll, failure -> {
            throw new AssertionError(failure);
        });
        return refused;
    }

    private List<String> codes() {
        return keeping.problems().stream().map(Problem::code).toList();
    }

    private static TypedDraft draft(String id) {
        return typed(id, "Dial by two", "2026-03-02", "R. Vane", "at the bench");
    }

    private void keepFirst() throws IOException {
        open("r.csv", ROWS);
        keeping.begin();
        type(draft(" O-1 ").with(KeepModel.TITLE, " Dial by two ").with(KeepModel.REMARKS, "at the bench "));
        assertThat(keep("Study saved")).isEmpty();
    }

    @Test
    void aStudyIsKeptAsReadWithWhatIsTypedAndShownAsKept() throws IOException {
        keepFirst();
        Version<KeptStudy> kept = bench.book.latest(KeptStudy.class, "O-1").orElseThrow();
        assertThat(kept.stamp().who()).isEqualTo("R. Vane");
        assertThat(kept.stamp().why()).isEqualTo("Study saved");
        KeptStudy study = kept.value();
        assertThat(study.layout()).isEqualTo(KeptStudy.Layout.OPERATORS);
        assertThat(study.title()).isEqualTo("Dial by two");
        assertThat(study.madeOn()).isEqualTo(LocalDate.of(2026, 3, 2));
        assertThat(study.by()).isEqualTo("R. Vane");
        assertThat(study.fileName()).isEqualTo("r.csv");
        assertThat(study.layers()).containsExactly("operator", "sample", "repeat");
        assertThat(study.remarks()).isEqualTo("at the bench");
        assertThat(study.readings()).hasSize(8);
        assertThat(study.readings().get(0))
                .isEqualTo(new KeptStudy.Reading(List.of("Ada", "x", "1"), new BigDecimal("5.40")));
        assertThat(keeping.isOpen()).isFalse();
        assertThat(model.file()).isEmpty();
        assertThat(model.subject()).isEqualTo("O-1, 2026-03-02, R. Vane, version 1");
        assertThat(model.pictureName("shares")).isEqualTo("O-1-shares.png");
        assertThat(model.kept()).containsExactly(new KeptStudies.Choice("O-1", 1, "2026-03-02  O-1  Dial by two"));
    }

    @Test
    void aKeptStudySaysTheSameAsItsFile() throws IOException {
        open("r.csv", ROWS);
        StudyShown ofFile = model.shown().orElseThrow();
        keepFirst();
        assertThat(model.shown()).contains(ofFile);
        StudyModel another = new StudyModel(bench.desk);
        Chosen.choose(another, Layout.OPERATORS);
        assertThat(another.shown()).isEmpty();
        another.showKept("O-1");
        assertThat(another.shown()).contains(ofFile);
        Chosen.choose(another, Layout.LABORATORIES);
        assertThat(another.kept()).isEmpty();
        assertThat(another.opened()).isEmpty();
    }

    @Test
    void nothingIsSaidOfWhatIsNotFilledInBeforeSomebodyTries() throws IOException {
        assertThat(keeping.isPossible()).as("no file is open").isFalse();
        open("r.csv", ROWS);
        assertThat(keeping.isPossible()).isTrue();
        assertThat(keeping.isOpen()).isFalse();
        keeping.begin();
        assertThat(keeping.isOpen()).isTrue();
        assertThat(keeping.draft()).isEqualTo(typed("", "", "", "R. Vane", ""));
        assertThat(codes()).isEmpty();
        assertThat(keeping.tryKeeping()).isFalse();
        assertThat(keeping.problems()).extracting(Problem::field).containsExactly("keep.id", "keep.madeOn");
        type(typed("O\u202E1", "", "2026-02-30", " ", ""));
        assertThat(codes()).containsExactly("form.required", "form.not-a-date");
        type(typed("O\u202E1", "x".repeat(201), "2026-03-02", "R. Vane", ""));
        assertThat(codes()).containsExactly("text.unseen", "text.too-long");
        type(typed("O-1", "", "1026-03-02", "R. Vane", ""));
        assertThat(codes()).as("as studies.csv refuses it").containsExactly("form.year-impossible");
        keeping.history().undo();
        assertThat(keeping.draft().text(KeepModel.BY)).isEqualTo("R. Vane");
        keeping.close();
        assertThat(keeping.isOpen()).isFalse();
        assertThat(bench.book.latest(KeptStudy.class)).isEmpty();
    }

    @Test
    void anotherFileUnderTheSameNameIsACorrection() throws IOException {
        keepFirst();
        open("r2.csv", ROWS.replace("Ada,x,1,5.40", "Ada,x,1,5.45"));
        keeping.begin();
        type(draft("O-1"));
        assertThat(keeping.base()).isPresent();
        assertThat(keep("misread")).isEmpty();
        assertThat(bench.book.history(KeptStudy.class, "O-1"))
                .extracting(version -> version.value().readings().get(0).value())
                .containsExactly(new BigDecimal("5.40"), new BigDecimal("5.45"));
        assertThat(model.subject()).endsWith("version 2");
        assertThat(model.kept()).extracting(KeptStudies.Choice::version).containsExactly(2);
    }

    @Test
    void aKeptStudyIsCorrectedFromWhatIsSaidOfIt() throws IOException {
        keepFirst();
        keeping.begin();
        assertThat(keeping.draft()).isEqualTo(draft("O-1"));
        assertThat(codes()).isEmpty();
        assertThat(keeping.tryKeeping()).isFalse();
        assertThat(codes()).containsExactly("study.kept-already");
        type(draft("O-1").with(KeepModel.MADE_ON, "2026-03-03"));
        assertThat(keep("wrong day")).isEmpty();
        assertThat(bench.book
                        .latest(KeptStudy.class, "O-1")
                        .orElseThrow()
                        .value()
                        .madeOn())
                .isEqualTo(LocalDate.of(2026, 3, 3));
        assertThat(bench.book
                        .latest(KeptStudy.class, "O-1")
                        .orElseThrow()
                        .value()
                        .fileName())
                .isEqualTo("r.csv");
    }

    @Test
    void aNameIsOfOneKindAndTellsItselfFromOthers() throws IOException {
        bench.keep(SampleStudies.layers("L-1"), SampleStudies.operators("O-2"));
        bench.desk.refresh();
        model.update();
        open("r.csv", ROWS);
        keeping.begin();
        type(draft("L-1"));
        assertThat(codes()).containsExactly("study.name-of-another-kind");
        assertThat(bench.desk.tools().problemText().say(keeping.problems().get(0)))
                .startsWith("L-1 is the name of a study of the kind \"Sources of scatter\"; this one is of the "
                        + "kind \"Operators on shared samples\".");
        assertThat(keeping.tryKeeping()).isFalse();
        type(draft("O  2"));
        assertThat(codes()).doesNotContain("study.name-of-another-kind");
        type(draft("o-2"));
        assertThat(codes()).containsExactly("id.differs-in-case");
        assertThat(keep("Study saved")).isEmpty();
        assertThat(model.kept()).extracting(KeptStudies.Choice::id).containsExactly("O-2", "o-2");
    }

    @Test
    void theNewestDayStandsFirst() {
        KeptStudy earlier = SampleStudies.operators("A");
        bench.keep(
                earlier,
                new KeptStudy(
                        SampleStudies.operators("B").id(),
                        earlier.layout(),
                        "",
                        earlier.madeOn().plusDays(1),
                        "R. Vale",
                        "",
                        earlier.layers(),
                        earlier.readings(),
                        ""),
                SampleStudies.operators("C"));
        bench.desk.refresh();
        model.update();
        assertThat(model.kept())
                .extracting(KeptStudies.Choice::words)
                .containsExactly("2026-03-03  B", "2026-03-02  A", "2026-03-02  C");
    }

    @Test
    void whatTheLabBookRefusesIsToldAndNothingIsLost() throws IOException {
        open("r.csv", ROWS);
        keeping.begin();
        type(draft("O-1"));
        assertThat(keeping.tryKeeping()).isTrue();
        bench.keep(SampleStudies.operators("O-1"));
        assertThat(keep("Study saved")).extracting(Problem::code).containsExactly("book.already-there");
        assertThat(keeping.isOpen()).isTrue();
        assertThat(keeping.draft()).isEqualTo(draft("O-1"));
        assertThat(model.file()).isPresent();
    }

    @Test
    void readingAndKeepingWaitForTheirTurnBesideTheEventThread() throws IOException {
        HeldTasks held = new HeldTasks();
        bench.keep(SampleStudies.operators("O-1"));
        DeskModel desk = new DeskModel(held.in(bench.desk.tools()), bench.book);
        desk.setPerson("R. Vane");
        StudyModel slow = new StudyModel(desk);
        desk.onChange(slow::update);
        Chosen.choose(slow, Layout.OPERATORS);
        assertThat(slow.kept()).isEmpty();
        while (held.count() > 0) {
            held.end();
        }
        assertThat(slow.kept()).hasSize(1);
        slow.showKept("O-1");
        held.end();
        slow.keeping().begin();
        slow.keeping().history().update("typed", draft("O-9"));
        held.holdAnswers();
        assertThat(slow.keeping().tryKeeping()).isTrue();
        slow.keeping().keep("Study saved", refused -> {}, failure -> {});
        assertThat(slow.keeping().isUnderWay()).isTrue();
        assertThat(slow.keeping().tryKeeping()).as("twice").isFalse();
        assertThat(bench.book.latest(KeptStudy.class)).hasSize(1);
        while (held.count() > 0) {
            held.end();
        }
        assertThat(slow.keeping().isUnderWay()).isFalse();
        assertThat(bench.book.latest(KeptStudy.class)).hasSize(2);
        assertThat(slow.subject()).startsWith("O-9, ");
        assertThat(slow.kept()).hasSize(2);
    }

    @Test
    void anotherLabBookHasOtherStudies() throws IOException {
        keepFirst();
        BenchBook other = new BenchBook(Locale.ENGLISH);
        bench.desk.turnTo(porebench.desk.Reading.of(other.book, BenchBook.TODAY.atTime(12, 0)));
        model.update();
        assertThat(model.kept()).isEmpty();
        assertThat(model.opened()).isEmpty();
        assertThat(model.shown()).isEmpty();
    }

    @Test
    void everyPictureOfATrainingBookSaysSo() throws IOException {
        bench.keep(new Laboratory("Hawmere Gate", "", true));
        bench.desk.refresh();
        open("r.csv", ROWS);
        assertThat(model.shown().orElseThrow().shares().orElseThrow().isSimulated())
                .isTrue();
        assertThat(model.shown().orElseThrow().readings().orElseThrow().isSimulated())
                .isTrue();
        Chosen.choose(model, Layout.LAYERS);
        Chosen.takeFromBook(model, false);
        open("l.csv", "day,value\nd1,0.4\nd1,0.5\nd2,0.6\nd2,0.8\n");
        assertThat(model.shown().orElseThrow().shares().orElseThrow().isSimulated())
                .isTrue();
        assertThat(model.shown().orElseThrow().verdict()).startsWith("SIMULATED");
    }

    private static TypedDraft typed(String id, String title, String madeOn, String by, String remarks) {
        return TypedDraft.BLANK
                .with(KeepModel.ID, id)
                .with(KeepModel.TITLE, title)
                .with(KeepModel.MADE_ON, madeOn)
                .with(KeepModel.BY, by)
                .with(KeepModel.REMARKS, remarks);
    }
}
