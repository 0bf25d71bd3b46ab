package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.evidence.standing.TrialsTaken;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.id.MixId;

/** What an import says of the determinations that took trials in is what the evidence of each says. */
class TrialsTakenTest {
    private static final List<Trial> TAKEN = List.of(
            Samples.trial("T-1", "M-2", "M-2/1", "5.4"),
            Samples.trial("T-2", "M-2", "M-2/1", "5.5"),
            Samples.trial("T-3", "M-1", "M-1/1", "5.6"),
            Samples.trial("T-4", "M-1", "M-1/1", "5.7"),
            Samples.trial("T-5", "M-1", "M-1/1", "5.6"));

    @TempDir
    Path folder;

    private LabBook book;

    @BeforeEach
    void aLaboratory() {
        book = Books.fresh(folder.resolve("book.porebench"));
        Books.keep(
                book,
                Samples.source("S-1", Role.FINE, "Ledge 1"),
                Samples.source("S-2", Role.COARSE, "Ledge 1"),
                Samples.meter("B-1", MeterType.B),
                Samples.mix("M-1", "S-1", "S-2"),
                Samples.mix("M-2", "S-1", "S-2"),
                Samples.determination("M-1/1", "M-1"),
                Samples.determination("M-1/2", "M-1"),
                Samples.determination("M-2/1", "M-2"),
                Samples.trial("T-0", "M-1", "M-1/2", "5.5"));
        LaboratoryStanding.of(book);
        Books.keep(book, List.copyOf(TAKEN));
    }

    @AfterEach
    void close() {
        book.close();
    }

    private TrialsTaken wanted(String mix, int determination) {
        List<Evidence> all = Evidence.ofAll(book);
        Evidence evidence = all.stream()
                .filter(one -> one.mix().value().id().equals(new MixId(mix)))
                .findFirst()
                .orElseThrow();
        JudgedDetermination judged = evidence.determinations().get(determination);
        return new TrialsTaken(
                judged.determination().value().id(),
                new MixId(mix),
                judged.counted(),
                evidence.stop(
                        judged,
                        LaboratoryScatter.ofCounted(all.stream()
                                .flatMap(one -> one.counted().stream())
                                .toList())));
    }

    private void isRight() {
        List<TrialsTaken> stand = TrialsTaken.of(book, TAKEN, Progress.UNHEARD);
        assertThat(stand).containsExactly(wanted("M-1", 0), wanted("M-2", 0));
        assertThat(stand).extracting(TrialsTaken::counted).containsExactly(3, 2);
        assertThat(stand).extracting(TrialsTaken::stop).allMatch(Optional::isPresent);
    }

    @Test
    void theDeterminationsThatTookTrialsInStandMixByMix() {
        isRight();
    }

    /** Somebody else's window may have worked the mixes out meanwhile, so that the standing reads none of them. */
    @Test
    void theyStandTheSameWhereNothingIsLeftToWorkOut() {
        LaboratoryStanding.of(book);
        assertThat(book.summaries().upTo(LaboratoryStanding.EDITION)).isEqualTo(book.changeNumber());
        isRight();
    }

    @Test
    void withoutTrialsThereIsNothingToSay() {
        assertThat(TrialsTaken.of(book, List.of(), Progress.UNHEARD)).isEmpty();
    }
}
