package porebench.record.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.method.Problem;
import porebench.record.PhotoFile;
import porebench.record.RecordKind;
import porebench.record.SheetPhoto;
import porebench.record.Trial;
import porebench.record.id.PhotoId;
import porebench.record.id.TrialId;

/** What must hold of the photos of signed sheets: one rule for window, command line and files. */
public final class Photos {
    private Photos() {}

    /** Returns the photos of a trial, withdrawn ones among them, in the order in which they were named. */
    public static List<Version<SheetPhoto>> of(Records book, TrialId trial) {
        return book.latestOf(Belonging.PHOTOS_OF_TRIAL, trial.text()).stream()
                .sorted((one, other) -> Integer.compare(number(trial, one.value()), number(trial, other.value())))
                .toList();
    }

    private static int number(TrialId trial, SheetPhoto photo) {
        String begins = beginning(trial);
        String id = photo.id().text();
        String number = id.startsWith(begins) ? id.substring(begins.length()) : "";
        return number.matches("[1-9]\\d{0,5}") ? Integer.parseInt(number) : Integer.MAX_VALUE;
    }

    private static String beginning(TrialId trial) {
        return trial.text() + "/photo-";
    }

    /**
     * Returns a new photo of a trial under the next name that is free.
     *
     * @param there the photos that the trial has
     * @param fileName the name of its file, without the folder
     */
    public static SheetPhoto next(TrialId trial, List<Version<SheetPhoto>> there, String fileName, PhotoFile file) {
        Set<String> taken =
                there.stream().map(one -> one.value().id().text()).collect(Collectors.toCollection(TreeSet::new));
        int number = 1;
        while (taken.contains(beginning(trial) + number)) {
            number++;
        }
        return new SheetPhoto(new PhotoId(beginning(trial) + number), trial, fileName, file, false);
    }

    /**
     * Returns why some drafts must not be kept for the photos among them; empty when they may.
     *
     * @param book where they are to be kept
     */
    public static List<Problem> refusals(Records book, List<Draft> drafts) {
        List<Problem> problems = new ArrayList<>();
        List<SheetPhoto> before = new ArrayList<>();
        for (Draft draft : drafts) {
            if (draft.value() instanceof SheetPhoto photo) {
                if (draft.isNew()) {
                    problems.addAll(ofNew(book, drafts, before, photo));
                    before.add(photo);
                } else {
                    ofCorrection(book, photo).ifPresent(problems::add);
                }
            }
        }
        return problems;
    }

    private static List<Problem> ofNew(Records book, List<Draft> drafts, List<SheetPhoto> before, SheetPhoto photo) {
        List<Problem> problems = new ArrayList<>();
        TrialId trial = photo.trialId();
        if (!photo.file().hasBytes()) {
            problems.add(Problem.error(
                    "file", "photo.no-bytes", photo.id().text(), photo.file().name()));
        }
        if (!hasTrial(book, drafts, trial)) {
            problems.add(unknownTrial(trial));
        }
        Stream<SheetPhoto> kept =
                book.latestOf(Belonging.PHOTOS_OF_TRIAL, trial.text()).stream().map(Version::value);
        Stream.concat(kept, before.stream().filter(one -> one.trialId().equals(trial)))
                .filter(one -> !one.withdrawn() && !photo.withdrawn())
                .filter(one -> one.file().equals(photo.file()))
                .filter(one -> !one.id().equals(photo.id()))
                .findFirst()
                .ifPresent(one -> problems.add(Problem.error(
                        "file", "photo.twice", trial.text(), one.id().text())));
        return problems;
    }

    /** Returns that a photo belongs to a trial that is not in the lab book. */
    public static Problem unknownTrial(TrialId trial) {
        return Problem.error("trialId", "photo.unknown-trial", trial.text());
    }

    private static boolean hasTrial(Records book, List<Draft> drafts, TrialId trial) {
        return book.latest(Trial.class, trial.text()).isPresent()
                || drafts.stream()
                        .map(Draft::value)
                        .anyMatch(value -> value.kind() == RecordKind.TRIAL
                                && value.recordId().equals(trial.text()));
    }

    private static Optional<Problem> ofCorrection(Records book, SheetPhoto photo) {
        return book.latest(SheetPhoto.class, photo.recordId())
                .map(Version::value)
                .filter(there -> there.withdrawn() || !there.takenBack().equals(photo))
                .map(there -> Problem.error(
                        "photo",
                        there.withdrawn() ? "photo.withdrawn-already" : "photo.only-withdrawn",
                        photo.id().text()));
    }
}
