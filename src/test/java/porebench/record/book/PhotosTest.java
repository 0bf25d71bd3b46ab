package porebench.record.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.method.Problem;
import porebench.record.PhotoFile;
import porebench.record.SamplePhotos;
import porebench.record.Samples;
import porebench.record.SheetPhoto;
import porebench.record.id.PhotoId;
import porebench.record.id.TrialId;

/** What must hold of photos of sheets before they are kept, and how they are named. */
class PhotosTest {
    private static final TrialId T1 = new TrialId("T-1");

    private final LabBook book = new MemoryLabBook(Clock.fixed(Instant.parse("2026-03-02T12:00:00Z"), ZoneOffset.UTC));

    @BeforeEach
    void twoTrials() {
        keep(
                Draft.of(Samples.trial("T-1", "M-1", "M-1/1", "5.4")),
                Draft.of(Samples.trial("T-2", "M-1", "M-1/1", "5.5")));
    }

    private void keep(Draft... drafts) {
        assertThat(book.keep(List.of(drafts), "A", "B")).isEmpty();
    }

    private List<String> refused(Draft... drafts) {
        return book.keep(List.of(drafts), "A", "B").stream().map(Problem::code).toList();
    }

    private SheetPhoto next(String trial, int seed) {
        TrialId id = new TrialId(trial);
        return Photos.next(id, Photos.of(book, id), "IMG.jpg", SamplePhotos.file(SamplePhotos.jpeg(100, seed)));
    }

    @Test
    void eachPhotoTakesTheNextNameOfItsTrialAndTheyStandInThatOrder() {
        IntStream.rangeClosed(1, 11).forEach(seed -> keep(Draft.of(next("T-1", seed))));
        keep(Draft.of(next("T-2", 1)));
        assertThat(Photos.of(book, T1))
                .extracting(one -> one.value().id().text())
                .startsWith("T-1/photo-1", "T-1/photo-2")
                .endsWith("T-1/photo-10", "T-1/photo-11");
        assertThat(Photos.of(book, new TrialId("T-2")))
                .extracting(one -> one.value().id().text())
                .containsExactly("T-2/photo-1");
    }

    @Test
    void aPhotoOfNoTrialIsRefused() {
        assertThat(refused(Draft.of(next("T-3", 1)))).containsExactly("photo.unknown-trial");
    }

    @Test
    void aPhotoMayComeTogetherWithItsTrial() {
        keep(Draft.of(Samples.trial("T-3", "M-1", "M-1/1", "5.5")), Draft.of(next("T-3", 1)));
    }

    @Test
    void aPhotoWithoutItsBytesIsRefused() {
        SheetPhoto photo = next("T-1", 1);
        PhotoFile known = PhotoFile.stated(
                photo.file().type(), photo.file().size(), photo.file().sha256());
        assertThat(refused(Draft.of(photo.with(known)))).containsExactly("photo.no-bytes");
    }

    @Test
    void theSamePhotoStandsOnceWithATrialAndMayStandWithOthers() {
        keep(Draft.of(next("T-1", 1)));
        assertThat(refused(Draft.of(next("T-1", 1)))).containsExactly("photo.twice");
        keep(Draft.of(next("T-2", 1)));
        SheetPhoto one = next("T-1", 2);
        SheetPhoto other = new SheetPhoto(new PhotoId("T-1/photo-9"), one.trialId(), one.fileName(), one.file(), false);
        assertThat(refused(Draft.of(one), Draft.of(other))).containsExactly("photo.twice");
    }

    @Test
    void aPhotoIsWithdrawnOnceAndChangedInNothingElse() {
        keep(Draft.of(next("T-1", 1)));
        Version<SheetPhoto> there = Photos.of(book, T1).get(0);
        SheetPhoto photo = there.value();
        assertThat(refused(Draft.correcting(there, photo))).containsExactly("photo.only-withdrawn");
        assertThat(refused(Draft.correcting(there, photo.with(next("T-1", 2).file()))))
                .containsExactly("photo.only-withdrawn");
        assertThat(refused(Draft.correcting(
                        there, photo.with(next("T-1", 2).file()).takenBack())))
                .containsExactly("photo.only-withdrawn");
        keep(Draft.correcting(there, photo.takenBack()));
        Version<SheetPhoto> withdrawn = Photos.of(book, T1).get(0);
        assertThat(withdrawn.number()).isEqualTo(2);
        assertThat(refused(Draft.correcting(withdrawn, photo))).containsExactly("photo.withdrawn-already");
        assertThat(refused(Draft.correcting(withdrawn, photo.takenBack()))).containsExactly("photo.withdrawn-already");
    }

    @Test
    void whatWasWithdrawnCanBeAddedAgainUnderANewName() {
        keep(Draft.of(next("T-1", 1)));
        Version<SheetPhoto> there = Photos.of(book, T1).get(0);
        keep(Draft.correcting(there, there.value().takenBack()));
        keep(Draft.of(next("T-1", 1)));
        assertThat(Photos.of(book, T1))
                .extracting(one -> one.value().id().text() + " " + one.value().withdrawn())
                .containsExactly("T-1/photo-1 true", "T-1/photo-2 false");
    }
}
