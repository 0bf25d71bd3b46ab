package porebench.desk.photo;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.desk.form.Days;
import porebench.method.Answer;
import porebench.method.Texts;
import porebench.record.PhotoFile;
import porebench.record.SheetPhoto;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Photos;
import porebench.record.book.Version;
import porebench.record.id.TrialId;

/** The photos of the sheet of the trial looked at, without a window. */
final class PhotosModel {
    private static final String BUNDLE = "porebench.desk.photo.photo";
    private static final int KILOBYTE = 1000;

    private final DeskModel desk;
    private final Texts texts;
    private final Supplier<Optional<TrialId>> trial;

    /**
     * Makes the model.
     *
     * @param trial the trial looked at, if one is
     */
    PhotosModel(DeskModel desk, Supplier<Optional<TrialId>> trial) {
        this.desk = desk;
        this.texts = Texts.of(BUNDLE, desk.tools().locale());
        this.trial = trial;
    }

    /** Asks for the photos of a trial, those that were withdrawn among them. */
    private record OfTrial(TrialId trial) implements Question<List<Version<SheetPhoto>>> {
        @Override
        public List<Version<SheetPhoto>> answer(Reading seen) {
            return Photos.of(seen.book(), trial);
        }
    }

    DeskModel desk() {
        return desk;
    }

    Texts texts() {
        return texts;
    }

    /** Returns the trial looked at. */
    Optional<TrialId> trial() {
        return trial.get();
    }

    /** Returns the photos that stand with the trial looked at; none until they were looked up. */
    List<Version<SheetPhoto>> photos() {
        return all().stream().filter(photo -> !photo.value().withdrawn()).toList();
    }

    private List<Version<SheetPhoto>> all() {
        return trial().flatMap(id -> desk.answer(new OfTrial(id))).orElse(List.of());
    }

    /** Says in a sentence what was withdrawn, by whom and why; empty when nothing was. */
    String withdrawn() {
        return String.join(
                "\n",
                all().stream()
                        .filter(photo -> photo.value().withdrawn())
                        .map(photo -> texts.get(
                                "withdrawn",
                                photo.value().fileName(),
                                photo.stamp().who(),
                                day(photo),
                                photo.stamp().why()))
                        .toList());
    }

    /** Says what file a photo is of, how large it is, and who kept it when. */
    String about(Version<SheetPhoto> photo) {
        return texts.get(
                "about",
                photo.value().fileName(),
                Integer.toString(Math.max(1, photo.value().file().size() / KILOBYTE)),
                photo.stamp().who(),
                day(photo));
    }

    private String day(Version<SheetPhoto> photo) {
        return Days.show(photo.stamp().at(), desk.tools().zone());
    }

    /**
     * Reads a photo beside the event thread and keeps it with a trial.
     *
     * @param outcome hears why it was not kept; empty when it was
     */
    void add(TrialId to, Path file, Outcome outcome) {
        LabBook book = desk.book();
        desk.tools()
                .tasks()
                .await(
                        texts.get("adding"),
                        progress -> read(book, to, file),
                        read -> {
                            if (book == desk.book()) {
                                keep(read, outcome);
                            }
                        },
                        outcome::fail);
    }

    private Answer<SheetPhoto> read(LabBook book, TrialId to, Path file) {
        Answer<PhotoFile> read = desk.tools().sheets().photo(file);
        String name = Optional.ofNullable(file.getFileName()).orElse(file).toString();
        return read.value()
                .map(found -> Answer.of(Photos.next(to, Photos.of(book, to), name, found), List.of()))
                .orElseGet(() -> Answer.refused(read.problems()));
    }

    private void keep(Answer<SheetPhoto> read, Outcome outcome) {
        read.value()
                .ifPresentOrElse(
                        photo -> desk.keep(List.of(Draft.of(photo)), texts.get("why.added"), outcome),
                        () -> outcome.take(read.problems()));
    }

    /** Withdraws a photo, with a reason. */
    void withdraw(Version<SheetPhoto> photo, String reason, Outcome outcome) {
        desk.keep(List.of(Draft.correcting(photo, photo.value().takenBack())), reason, outcome);
    }
}
