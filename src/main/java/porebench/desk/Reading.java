package porebench.desk;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.MeterStory;
import porebench.evidence.RegisterRow;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Profile;
import porebench.record.Laboratory;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Training;
import porebench.record.book.Version;

/**
 * What the window shows of a lab book, read at one time; reading a large one takes a while, so it is done beside the event
 * thread.
 *
 * @param book the lab book
 * @param moment the day and time as of which its factors stand, by the laboratory's clock
 * @param changesAt when they will stand otherwise though nothing is kept; empty when never
 * @param standing how its mixes stand
 * @param scatter how trials scatter in the laboratory
 * @param rows one line a mix, at that moment
 * @param laboratory whose lab book it is; empty while nobody said so
 * @param isDemo whether it began as the lab book of the demo laboratory, which is invented
 * @param meters the story of every meter under the usual profile, in the order of their ids
 * @param usualProfile the profile of what belongs to no mix
 */
public record Reading(
        LabBook book,
        LocalDateTime moment,
        Optional<LocalDateTime> changesAt,
        LaboratoryStanding standing,
        LaboratoryScatter scatter,
        List<RegisterRow> rows,
        Optional<Laboratory> laboratory,
        boolean isDemo,
        List<MeterStory> meters,
        Profile usualProfile) {
    public Reading {
        rows = List.copyOf(rows);
        meters = List.copyOf(meters);
    }

    /** Returns the day as of which its factors stand. */
    public LocalDate day() {
        return moment.toLocalDate();
    }

    /** Returns whether its factors stand otherwise at another moment. */
    boolean isOtherAt(LocalDateTime now) {
        return !now.toLocalDate().equals(day())
                || changesAt.filter(change -> !now.isBefore(change)).isPresent();
    }

    /** Reads a lab book as it stands at a moment. */
    public static Reading of(LabBook book, LocalDateTime moment) {
        return of(book, moment, Progress.UNHEARD);
    }

    /** Reads a lab book as it stands at a moment, and says how far it is. */
    public static Reading of(LabBook book, LocalDateTime moment, Progress progress) {
        return of(book, moment, LaboratoryStanding.of(book, progress));
    }

    /** Reads the same lab book as it stands now: only what something touched since is worked out. */
    Reading renewed(LocalDateTime now, Progress progress) {
        return of(book, now, standing.renewed(progress));
    }

    private static Reading of(LabBook book, LocalDateTime moment, LaboratoryStanding standing) {
        Profile usual = MeterStory.usualProfile(book);
        return new Reading(
                book,
                moment,
                standing.changesAfter(moment),
                standing,
                standing.scatter(),
                standing.rows(moment),
                book.latest(Laboratory.class, Laboratory.ID).map(Version::value),
                Training.isDemo(book),
                MeterStory.ofAll(book, usual),
                usual);
    }
}
