package porebench.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryEquipment;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.MeterStory;
import porebench.evidence.RegisterRow;
import porebench.method.Profile;
import porebench.record.LabBook;
import porebench.record.Laboratory;
import porebench.record.Version;

/**
 * What the window shows of a lab book, read at one time; reading a large one takes a while, so it is done beside the event
 * thread when a lab book is opened.
 *
 * @param book the lab book
 * @param day the day as of which its factors stand
 * @param change the number of its last change
 * @param everything everything known about every mix, in the order of their ids
 * @param rows one line a mix
 * @param scatter how trials scatter in the laboratory
 * @param laboratory whose lab book it is; empty while nobody said so
 * @param equipment its balances, cylinders, thermometers and vessels, with what held on earlier days
 * @param meters the story of every meter under the usual profile, in the order of their ids
 * @param usualProfile the profile of what belongs to no mix
 */
public record Reading(
        LabBook book,
        LocalDate day,
        long change,
        List<Evidence> everything,
        List<RegisterRow> rows,
        LaboratoryScatter scatter,
        Optional<Laboratory> laboratory,
        LaboratoryEquipment equipment,
        List<MeterStory> meters,
        Profile usualProfile) {
    public Reading {
        everything = List.copyOf(everything);
        rows = List.copyOf(rows);
        meters = List.copyOf(meters);
    }

    /** Reads a lab book as it stands on a day. */
    public static Reading of(LabBook book, LocalDate day) {
        long change = book.changeNumber();
        List<Evidence> all = Evidence.ofAll(book);
        Profile usual = MeterStory.usualProfile(book);
        return new Reading(
                book,
                day,
                change,
                all,
                all.stream().map(one -> RegisterRow.of(one, day)).toList(),
                LaboratoryScatter.of(all),
                book.latest(Laboratory.class, Laboratory.ID).map(Version::value),
                all.isEmpty() ? LaboratoryEquipment.of(book) : all.get(0).equipment(),
                MeterStory.ofAll(book, usual),
                usual);
    }
}
