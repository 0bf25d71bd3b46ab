package porebench.desk.frame.rail;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.desk.MixNote;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.TrialsBehind;
import porebench.record.id.MixId;

class MixSearchTest {
    private static final MixId DECK = new MixId("HG-101");
    private static final MixId KERB = new MixId("HG-102");

    private final MixSearch search = new MixSearch(state -> state == FactorState.LAPSED ? "vencido" : "vigente");

    MixSearchTest() {
        search.among(
                List.of(
                        row(DECK, "Tablero de puente 40", FactorState.IN_FORCE),
                        row(KERB, "Bordillo", FactorState.LAPSED)),
                Map.of(DECK, "Planta Almería\nS-01\nCantera de Ñemby"));
    }

    private static RegisterRow row(MixId id, String title, FactorState state) {
        return new RegisterRow(
                id,
                title,
                "",
                state,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                TrialsBehind.NONE,
                Optional.empty(),
                List.of());
    }

    private List<MixId> found(String sought) {
        return search.find(sought).stream().map(RegisterRow::mixId).toList();
    }

    @Test
    void findsByNameTitleStateSourceAndRemarks() {
        assertThat(found("g-101")).containsExactly(DECK);
        assertThat(found("bordillo")).containsExactly(KERB);
        assertThat(found("vencido")).containsExactly(KERB);
        assertThat(found("s-01")).containsExactly(DECK);
        assertThat(found("planta")).containsExactly(DECK);
    }

    @Test
    void wordsCountInAnyOrderAndEachMustBeThere() {
        assertThat(found("puente vigente hg")).containsExactly(DECK);
        assertThat(found("hg puente vencido")).isEmpty();
        assertThat(found("hg-10")).containsExactly(DECK, KERB);
    }

    @Test
    void accentsAndCapitalsDoNotCount() {
        assertThat(found("ALMERIA")).containsExactly(DECK);
        assertThat(found("nemby")).containsExactly(DECK);
        assertThat(found("\u00D1emby")).containsExactly(DECK);
        assertThat(found("almeri\u0301a")).containsExactly(DECK);
    }

    @Test
    void aBlankTextAsksForNothingAndFindsAll() {
        assertThat(found(" \u00A0\t")).containsExactly(DECK, KERB);
        assertThat(MixSearch.asks(" \u00A0")).isFalse();
        assertThat(MixSearch.asks(" x")).isTrue();
    }

    @Test
    void aWordDoesNotRunOverFromOneFieldIntoTheNext() {
        assertThat(found("40vigente")).isEmpty();
    }

    @Test
    void othersAreLookedAmongFromThenOn() {
        search.among(List.of(row(KERB, "Kerb", FactorState.LAPSED)), Map.of(KERB, "new words"));
        assertThat(found("new")).containsExactly(KERB);
        assertThat(found("puente")).isEmpty();
    }

    @Test
    void notesOfAMixStandSideBySide() {
        MixNote soaking = mix -> Optional.of("soaking, 8 min left").filter(any -> mix.equals(DECK));
        MixNote begun = mix -> Optional.of("typing begun");
        assertThat(MixNote.NONE.and(soaking).and(begun).apply(DECK)).contains("soaking, 8 min left · typing begun");
        assertThat(MixNote.NONE.and(soaking).and(begun).apply(KERB)).contains("typing begun");
        assertThat(MixNote.NONE.and(soaking).apply(KERB)).isEmpty();
    }
}
