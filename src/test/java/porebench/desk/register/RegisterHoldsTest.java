package porebench.desk.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.Settings;
import porebench.desk.hold.HoldDesk;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.hold.PairsBench;

/** A mix of which field readings and densities part, in the register. */
class RegisterHoldsTest {
    @TempDir
    Path folder;

    @Test
    void aRecheckOfGIsSaidFilteredAndChangesNoState() {
        HoldDesk made = new HoldDesk(folder, Locale.ENGLISH);
        RegisterModel model = new RegisterModel(made.desk, RecordPage.texts(made.desk), Settings.inMemory());
        model.want(Wanted.RECHECK_G);
        assertThat(model.rows()).isEmpty();
        made.read(PairsBench.SHIFTED);
        RegisterRow row = model.rows().get(0);
        assertThat(model.rows()).hasSize(1);
        assertThat(row.state()).isEqualTo(FactorState.IN_FORCE);
        assertThat(model.recheckWords(row)).isEqualTo("5.50 (4.23 to 6.77)");
        assertThat(model.recheckSize(row)).isBetween(5.49, 5.51);
        assertThat(model.missingWords(row))
                .startsWith("Recheck G: air by the meter less air by density has changed by 5.50");
        model.want(Wanted.ATTENTION);
        assertThat(model.rows()).hasSize(1);
        made.made.close();
    }

    @Test
    void quietPairsSayNothing() {
        HoldDesk made = new HoldDesk(folder, Locale.ENGLISH);
        RegisterModel model = new RegisterModel(made.desk, RecordPage.texts(made.desk), Settings.inMemory());
        made.read(PairsBench.QUIET);
        RegisterRow row = model.rows().get(0);
        assertThat(model.recheckWords(row)).isEmpty();
        assertThat(model.recheckSize(row)).isNegative();
        model.want(Wanted.RECHECK_G);
        assertThat(model.rows()).isEmpty();
        made.made.close();
    }
}
