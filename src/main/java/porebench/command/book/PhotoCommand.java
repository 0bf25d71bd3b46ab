package porebench.command.book;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.WhereTo;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.PhotoFile;
import porebench.record.SheetPhoto;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Photos;
import porebench.record.book.Version;
import porebench.record.id.PhotoId;
import porebench.record.id.TrialId;

/** {@code photo}: the photos of a trial's signed sheet: told, one added, one withdrawn, or all written into a folder. */
@Command(name = "photo")
public final class PhotoCommand extends BookCommand {
    @Option(names = "--trial-id", required = true, paramLabel = "<id>")
    private TrialId trialId;

    @ArgGroup(multiplicity = "0..1")
    private @Nullable Doing doing;

    @Mixin
    private final Keeper who = new Keeper();

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    /** What is done; without any of it, the photos are told. */
    static final class Doing {
        @Option(names = "--file", required = true, paramLabel = "<file>")
        private @Nullable Path file;

        @Option(names = "--out", required = true, paramLabel = "<folder>")
        private @Nullable Path out;

        @ArgGroup(exclusive = false, multiplicity = "1")
        private @Nullable Withdrawing withdrawing;
    }

    static final class Withdrawing {
        @Option(names = "--withdraw", required = true, paramLabel = "<id>")
        private PhotoId photo;

        @Option(names = "--reason", required = true, paramLabel = "<text>")
        private String reason;
    }

    public PhotoCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    /**
     * What was done.
     *
     * @param changed the photo that was added or withdrawn, if one was
     * @param photos the photos of the trial as they are then
     * @param files the files that were written
     */
    private record Told(Optional<PhotoId> changed, List<Version<SheetPhoto>> photos, List<Path> files) {}

    @Override
    protected CommandOutcome carryOut() {
        try (LabBook book = open()) {
            CommandOutcome outcome = book.latest(Trial.class, trialId.text()).isEmpty()
                    ? CommandOutcome.refused(Photos.unknownTrial(trialId))
                    : ofTrial(book);
            return marked(book, outcome);
        }
    }

    private CommandOutcome ofTrial(LabBook book) {
        if (doing == null) {
            return told(book, Optional.empty(), List.of());
        }
        if (doing.file != null) {
            return add(book, doing.file);
        }
        return doing.out != null ? write(book, doing.out) : withdraw(book);
    }

    private CommandOutcome told(LabBook book, Optional<PhotoId> changed, List<Path> files) {
        return CommandOutcome.done(said().report(new Told(changed, Photos.of(book, trialId), files)), List.of());
    }

    private CommandOutcome add(LabBook book, Path file) {
        Answer<PhotoFile> read = ports().sheets().get().photo(file);
        if (read.value().isEmpty()) {
            return CommandOutcome.refused(read.problems());
        }
        String name = Optional.ofNullable(file.getFileName()).orElse(file).toString();
        SheetPhoto photo = Photos.next(
                trialId, Photos.of(book, trialId), name, read.value().get());
        return kept(book, Draft.of(photo), photo.id(), words().get("photo.why"));
    }

    private CommandOutcome withdraw(LabBook book) {
        Withdrawing wish = doing == null ? null : doing.withdrawing;
        if (wish == null) {
            throw new IllegalStateException("a photo must be named, but none is");
        }
        Optional<Version<SheetPhoto>> there = Photos.of(book, trialId).stream()
                .filter(one -> one.value().id().equals(wish.photo))
                .findFirst();
        if (there.isEmpty()) {
            return CommandOutcome.refused(
                    Problem.error("withdraw", "photo.not-of-trial", trialId.text(), wish.photo.text()));
        }
        Draft draft = Draft.correcting(there.get(), there.get().value().takenBack());
        return kept(book, draft, wish.photo, wish.reason);
    }

    private CommandOutcome kept(LabBook book, Draft draft, PhotoId photo, String why) {
        List<Problem> refused = book.keep(List.of(draft), who.name(here()), why);
        if (!refused.isEmpty()) {
            return CommandOutcome.refused(refused);
        }
        acted();
        return told(book, Optional.of(photo), List.of());
    }

    private CommandOutcome write(LabBook book, Path folder) {
        List<PhotoFile> photos = Photos.of(book, trialId).stream()
                .map(Version::value)
                .filter(photo -> !photo.withdrawn())
                .map(SheetPhoto::file)
                .toList();
        if (photos.isEmpty()) {
            return CommandOutcome.refused(Problem.error("trialId", "photo.none", trialId.text()));
        }
        List<Path> files = ports().sheets().get().writePhotos(book, photos, whereTo.folder(folder));
        acted();
        return told(book, Optional.empty(), files);
    }

    private ReportLayout<Told> said() {
        ReportLayout<Version<SheetPhoto>> photos = this.<Version<SheetPhoto>>laidOut()
                .text("photoId", "photo.id", one -> one.value().id().text())
                .text("fileName", "photo.file", one -> one.value().fileName())
                .text("mediaType", one -> one.value().file().type().symbol())
                .whole("bytes", "photo.bytes", one -> one.value().file().size())
                .text("sha256", one -> one.value().file().sha256())
                .text("who", "photo.who", one -> one.stamp().who())
                .text("at", one -> one.stamp().at().toString())
                .text("why", one -> one.stamp().why())
                .flag("withdrawn", one -> one.value().withdrawn())
                .cell(
                        "photo.state",
                        one -> words().get(one.value().withdrawn() ? "photo.is-withdrawn" : "photo.is-kept"));
        return this.<Told>laidOut()
                .text("trialId", told -> trialId.text())
                .field((json, told) -> json.text("photoId", told.changed().map(PhotoId::text)))
                .line(told -> words().get(
                                "photo.of-trial",
                                trialId.text(),
                                Integer.toString(told.photos().size())))
                .list("photos", Told::photos, photos)
                .field((json, told) -> json.texts(
                        "files", told.files().stream().map(Path::toString).toList()))
                .alone((page, told) ->
                        told.files().forEach(file -> page.line(words().get("photo.written", file.toString()))));
    }
}
