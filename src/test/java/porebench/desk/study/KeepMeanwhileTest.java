package porebench.desk.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
import porebench.record.SampleStudies;
import porebench.record.book.Draft;
import porebench.record.book.Version;

/** What happens to the keeping of a study when something else comes on view or into the lab book meanwhile. */
class KeepMeanwhileTest {
    private static final String LAYERS = "day,meter,value\nd1,B-1,0.40\nd1,B-1,0.45\nd2,B-2,0.50\nd2,B-2,0.55\n";

    @TempDir
    Path folder;

    private final BenchBook bench = new BenchBook();
    private StudyModel model;
    private KeepModel keeping;

    @BeforeEach
    void begin() {
        bench.keep(SampleStudies.operators("O-1"), SampleStudies.operators("O-2"));
        bench.desk.refresh();
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

    private Version<KeptStudy> newest() {
        return bench.book.latest(KeptStudy.class, "O-1").orElseThrow();
    }

    /** Somebody else reads 5.50 for 5.40, and says so. */
    private void correctElsewhere() {
        KeptStudy before = newest().value();
        List<KeptStudy.Reading> readings = new ArrayList<>(before.readings());
        readings.set(0, SampleStudies.reading("Ada x 1 5.50"));
        KeptStudy corrected = new KeptStudy(
                before.id(),
                before.layout(),
                "misread",
                before.madeOn(),
                before.by(),
                before.fileName(),
                before.layers(),
                readings,
                before.remarks());
        assertThat(bench.book.keep(List.of(Draft.correcting(newest(), corrected)), "S. Else", "misread"))
                .isEmpty();
        bench.desk.refresh();
        model.update();
    }

    private void type(TypedDraft draft) {
        keeping.history().update("typed", draft);
    }

    private List<String> keep() {
        assertThat(keeping.tryKeeping()).as(keeping.problems().toString()).isTrue();
        List<Problem> refused = new ArrayList<>();
        keeping.keep("dry", refused::addAll, failure -> {
            throw new AssertionError(failure);
        });
        return refused.stream().map(Problem::code).toList();
    }

    @Test
    void aKeptStudyOnViewIsItsNewestVersion() {
        model.showKept("O-1");
        StudyShown before = model.shown().orElseThrow();
        correctElsewhere();
        assertThat(model.subject()).endsWith("version 2");
        assertThat(model.shown().orElseThrow()).isNotEqualTo(before);
        keeping.begin();
        type(keeping.draft().with(KeepModel.REMARKS, "dry"));
        assertThat(keep()).isEmpty();
        assertThat(newest().number()).isEqualTo(3);
        assertThat(newest().value().readings().get(0)).isEqualTo(SampleStudies.reading("Ada x 1 5.50"));
        assertThat(newest().value().title()).isEqualTo("misread");
    }

    @Test
    void aCorrectionDoesNotUndoWhatSomebodyElseCorrectedSinceItBegan() {
        model.showKept("O-1");
        keeping.begin();
        type(keeping.draft().with(KeepModel.REMARKS, "dry"));
        correctElsewhere();
        assertThat(keep()).containsExactly("book.changed-meanwhile");
        assertThat(keeping.draft().text(KeepModel.REMARKS))
                .as("nothing typed is lost")
                .isEqualTo("dry");
        assertThat(newest().number()).isEqualTo(2);
        keeping.close();
        keeping.begin();
        type(keeping.draft().with(KeepModel.REMARKS, "dry"));
        assertThat(keep()).isEmpty();
        assertThat(newest().value().title() + newest().value().remarks()).isEqualTo("misreaddry");
    }

    @Test
    void aCorrectionOfWhichNothingIsTypedFollowsWhatSomebodyElseSays() {
        model.showKept("O-1");
        keeping.begin();
        correctElsewhere();
        assertThat(keeping.draft().text(KeepModel.TITLE)).isEqualTo("misread");
        type(keeping.draft().with(KeepModel.REMARKS, "dry"));
        assertThat(keep()).isEmpty();
    }

    @Test
    void anotherKeptStudyLeavesTheDraftAndAFileDoesNot() throws IOException {
        model.showKept("O-1");
        keeping.begin();
        type(keeping.draft().with(KeepModel.REMARKS, "dry"));
        open(
                "r.csv",
                "operator,sample,repeat,value\nA,1,1,1\nA,1,2,2\nA,2,1,5\nA,2,2,6\nB,1,1,2\nB,1,2,3\nB,2,1,7\nB,2,2,6\n");
        assertThat(keeping.isOpen()).isTrue();
        model.showKept("O-1");
        assertThat(keeping.isOpen()).as("the readings are its own again").isTrue();
        model.showKept("O-2");
        assertThat(keeping.isOpen()).isFalse();
        model.showKept("O-1");
        assertThat(keeping.isOpen()).as("it is found again with its study").isTrue();
        assertThat(keeping.draft().text(KeepModel.REMARKS)).isEqualTo("dry");
        keeping.close();
        model.showKept("O-2");
        model.showKept("O-1");
        assertThat(keeping.isOpen()).as("what was dropped stays so").isFalse();
    }

    /** As after a start of the program: nothing is known but the lab book and what is kept outside it. */
    @Test
    void whatWasTypedIsThereAgainOnceItsReadingsAreOnViewAndOnTheVersionItWasTypedOn() throws IOException {
        String rows =
                "operator,sample,repeat,value\nA,1,1,1\nA,1,2,2\nA,2,1,5\nA,2,2,6\nB,1,1,2\nB,1,2,3\nB,2,1,7\nB,2,2,6\n";
        open("r.csv", rows);
        keeping.begin();
        type(keeping.draft().with(KeepModel.TITLE, "two hands"));
        model.showKept("O-1");
        keeping.begin();
        type(keeping.draft().with(KeepModel.REMARKS, "dry"));
        correctElsewhere();
        model = new StudyModel(bench.desk);
        keeping = model.keeping();
        Chosen.choose(model, Layout.OPERATORS);
        assertThat(keeping.isOpen()).isFalse();
        model.showKept("O-1");
        assertThat(keeping.draft().text(KeepModel.REMARKS)).isEqualTo("dry");
        assertThat(keep()).containsExactly("book.changed-meanwhile");
        open("r.csv", rows);
        assertThat(keeping.draft().text(KeepModel.REMARKS))
                .as("a file puts other readings under it")
                .isEqualTo("dry");
        model.showNone();
        open("r.csv", rows);
        assertThat(keeping.draft().text(KeepModel.TITLE)).isEqualTo("two hands");
    }

    @Test
    void aDraftIsOfTheKindItBeganWith() throws IOException {
        model.showKept("O-1");
        keeping.begin();
        type(keeping.draft().with(KeepModel.REMARKS, "dry"));
        Chosen.choose(model, Layout.LABORATORIES);
        open("l.csv", "laboratory,level,value\nN,1,1\nN,1,2\nS,1,2\nS,1,3\n");
        assertThat(keeping.isOpen()).isFalse();
        Chosen.choose(model, Layout.OPERATORS);
        assertThat(keeping.isOpen()).isTrue();
    }

    @Test
    void layersThatCannotCrossAreKeptAsAnImportKeepsThem() throws IOException {
        Chosen.choose(model, Layout.LAYERS);
        Chosen.takeFromBook(model, false);
        open("l.csv", LAYERS);
        keeping.begin();
        type(typed("L-1", "", "2026-03-02", "R. Vane", ""));
        Chosen.cross(model, true);
        assertThat(model.shown()).as("each day has its own meter").isEmpty();
        assertThat(model.problems()).isNotEmpty();
        assertThat(keeping.isOpen()).isTrue();
        assertThat(keeping.isPossible()).isTrue();
        assertThat(keep()).isEmpty();
        assertThat(bench.book.latest(KeptStudy.class, "L-1")).isPresent();
    }

    @Test
    void aFileThatAnImportRefusesIsNotKept() throws IOException {
        open("r.csv", "operator,sample,repeat,value\nA,1,1,1\nA,1,2,2\nB,1,1,2\n");
        assertThat(keeping.isPossible()).isFalse();
        assertThat(model.problems()).isNotEmpty();
    }

    @Test
    void studiesThatCouldNotBeReadAreReadAtTheNextOccasion() {
        HeldTasks held = new HeldTasks();
        StudyModel slow = new StudyModel(new DeskModel(held.in(bench.desk.tools()), bench.book));
        Chosen.choose(slow, Layout.OPERATORS);
        while (held.count() > 0) {
            held.stop();
        }
        assertThat(slow.kept()).isEmpty();
        slow.update();
        while (held.count() > 0) {
            held.end();
        }
        assertThat(slow.kept()).hasSize(2);
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
