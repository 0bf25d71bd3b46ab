package porebench.store.rows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.record.LaboratoryProfile;

class ProfileTableTest {
    /** A lab book kept by an earlier program does not state figures that the program learned since. */
    @Test
    void takesAFigureThatIsNotStoredFromTheStandardTheProfileStartedFrom() {
        Profile japanese = Profiles.find("jis-a1128").orElseThrow();
        Profile own = japanese.copyAs("own", "Own")
                .with(FigureName.LEAST_TRIALS, new Figure("4", "our manual", Mark.LABORATORY));
        RecordTable<LaboratoryProfile> table = RecordTable.of(LaboratoryProfile.class);
        StoredRecord stored = table.rows(new LaboratoryProfile(own));
        List<StoredRow> older = stored.parts().stream()
                .filter(part -> !part.text("figure").equals(FigureName.HALF_WIDTH.symbol()))
                .toList();
        assertThat(older).hasSize(FigureName.values().length - 1);
        Profile read = table.value(new StoredRecord(stored.row(), older)).profile();
        assertThat(read.figure(FigureName.HALF_WIDTH)).isEqualTo(japanese.figure(FigureName.HALF_WIDTH));
        assertThat(read.count(FigureName.LEAST_TRIALS)).isEqualTo(4);
    }
}
