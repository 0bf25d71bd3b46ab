package porebench.desk.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.BenchBook;
import porebench.method.Problem;
import porebench.record.SamplePhotos;
import porebench.record.id.TrialId;

/** The photos beside a trial's story: looked up, added, withdrawn, told, and refused in the words of the one gate. */
class PhotosModelTest {
    private static final TrialId TRIAL = new TrialId("T-1");

    @TempDir
    Path folder;

    private final BenchBook bench = new BenchBook();
    private final List<String> outcomes = new ArrayList<>();
    private Optional<TrialId> looked = Optional.of(TRIAL);
    private PhotosModel model;
    private Path sheet;

    @BeforeEach
    void oneTrial() throws IOException {
        bench.keep(
                BenchBook.determination(1, LocalDate.of(2026, 3, 2)),
                BenchBook.trial("T-1", 1, LocalDate.of(2026, 3, 2), "6.4"));
        bench.select();
        model = new PhotosModel(bench.desk, () -> looked);
        sheet = Files.write(folder.resolve("IMG_7.jpg"), SamplePhotos.jpeg(2_345_678, 1));
    }

    private void outcome(List<Problem> refused) {
        outcomes.add(String.join(" ", refused.stream().map(Problem::code).toList()));
    }

    @Test
    void aPhotoIsAddedAndToldWithItsFileSizePersonAndDay() {
        assertThat(model.photos()).isEmpty();
        model.add(TRIAL, sheet, this::outcome);
        assertThat(outcomes).containsExactly("");
        assertThat(model.photos()).singleElement().satisfies(photo -> {
            assertThat(photo.value().id().text()).isEqualTo("T-1/photo-1");
            assertThat(photo.stamp().why()).isEqualTo("Photo of the signed sheet");
            assertThat(model.about(photo))
                    .startsWith("IMG_7.jpg, 2345 kB, saved by R. Vane, ")
                    .contains("2026");
        });
        assertThat(model.withdrawn()).isEmpty();
    }

    @Test
    void noneAreShownWhileNoTrialIsLookedAt() {
        model.add(TRIAL, sheet, this::outcome);
        looked = Optional.empty();
        assertThat(model.photos()).isEmpty();
        assertThat(model.trial()).isEmpty();
    }

    @Test
    void whatIsWithdrawnIsNoLongerShownAndSaidWithItsReason() {
        model.add(TRIAL, sheet, this::outcome);
        model.withdraw(model.photos().get(0), "blurred", this::outcome);
        assertThat(outcomes).containsExactly("", "");
        assertThat(model.photos()).isEmpty();
        assertThat(model.withdrawn())
                .startsWith("Photo IMG_7.jpg was withdrawn by R. Vane, ")
                .endsWith(": blurred");
    }

    @Test
    void whatTheCommandLineRefusesIsRefusedHere() throws IOException {
        model.add(TRIAL, sheet, this::outcome);
        model.add(TRIAL, sheet, this::outcome);
        model.add(TRIAL, Files.writeString(folder.resolve("a.png"), "words"), this::outcome);
        model.add(TRIAL, folder.resolve("absent.png"), this::outcome);
        model.add(new TrialId("T-9"), Files.write(folder.resolve("b.png"), SamplePhotos.png(9, 2)), this::outcome);
        assertThat(outcomes)
                .containsExactly("", "photo.twice", "photo.not-a-picture", "csv.file-missing", "photo.unknown-trial");
        assertThat(model.photos()).hasSize(1);
    }
}
