package porebench.desk;

import java.time.LocalDate;
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
 * @param day the day as of which its factors stand
 * @param standing how its mixes stand
 * @param scatter how trials scatter in the laboratory
 * @param rows one line a mix, on that day
 * @param laboratory whose lab book it is; empty while nobody said so
 * @param isDemo whether it began as the lab book of the demo laboratory, which is invented
 * @param meters the story of every meter under the usual profile, in the order of their ids
 * @param usualProfile the profile of what belongs to no mix
 */
public record Reading(
        LabBook book,
        LocalDate day,
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

    /** Reads a lab book as it stands on a day. */
    public static Reading of(LabBook book, LocalDate day) {
        return of(book, day, Progress.UNHEARD);
    }

    /** Reads a lab book as it stands on a day, and says how far it is. */
    public static Reading of(LabBook book, LocalDate day, Progress progress) {
        return of(book, day, LaboratoryStanding.of(book, progress));
    }

    /** Reads the same lab book as it stands now, on a day: only what something touched since is worked out. */
    Reading renewed(LocalDate today, Progress progress) {
        return of(book, today, standing.renewed(progress));
    }

    private static Reading of(LabBook book, LocalDate day, LaboratoryStanding standing) {
        Profile usual = MeterStory.usualProfile(book);
        return new Reading(
                book,
                day,
                standing,
                standing.scatter(),
                standing.rows(day),
                book.latest(Laboratory.class, Laboratory.ID).map(Version::value),
                Training.isDemo(book),
                MeterStory.ofAll(book, usual),
                usual);
    }
}
