package porebench.evidence.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.EvidenceReader;
import porebench.evidence.FactorState;
import porebench.evidence.GroupBench;
import porebench.evidence.Moments;
import porebench.method.Role;
import porebench.record.MixDesign;
import porebench.record.SampleGroups;
import porebench.record.Samples;
import porebench.record.id.GroupId;
import porebench.store.Books;

/** A group as it stands, and the mixes that might be in one. */
class GroupLookTest {
    private static final LocalDate MAY = LocalDate.of(2026, 5, 4);

    @TempDir
    Path folder;

    private GroupBench group;
    private Bench bench;

    @BeforeEach
    void begin() {
        group = new GroupBench(folder);
        bench = group.bench;
    }

    @AfterEach
    void end() {
        bench.close();
    }

    @Test
    void theGroupIsLookedAtWithHowFarEachMemberIs() {
        group.issue();
        Books.correct(bench.book, SampleGroups.mix("M-3", "770", "980"));
        GroupLook look = GroupLook.of(EvidenceReader.asking(bench.book)::readEach, group.group(), Moments.endOf(MAY));
        assertThat(look.members()).extracting(one -> one.mixId().text()).containsExactly("M-1", "M-2", "M-3");
        assertThat(look.members()).extracting(GroupLook.Member::isTested).containsExactly(true, false, false);
        assertThat(look.members())
                .extracting(GroupLook.Member::state)
                .containsExactly(FactorState.IN_FORCE, FactorState.IN_FORCE, FactorState.SOURCE_CHANGED);
        assertThat(look.members().get(1).likeness().apartPoints()).isCloseTo(1, within(1e-9));
        assertThat(look.members().get(2).likeness().isLike()).isFalse();
        assertThat(Books.codes(look.members().get(2).why())).containsOnly("register.drifted");
        assertThat(look.members())
                .allMatch(one -> one.hasGroupFactor(group.group().value()));
        assertThat(Books.codes(look.members().get(2).matters(group.group().value())))
                .containsOnly("register.drifted");
        assertThat(look.open()).contains(Bench.FIRST);
    }

    @Test
    void mixesOfLikeProportionsAreListedTheNearestFirst() {
        Books.keep(bench.book, Samples.source("S-3", Role.COARSE, "Ledge 1"), Samples.mix("M-8", "S-1", "S-3"));
        MixDesign tested = bench.mix();
        assertThat(LikeMix.of(bench.book, tested, new BigDecimal("2")))
                .extracting(one -> one.mixId().text())
                .containsExactly("M-9", "M-2", "M-3");
        List<LikeMix> near = LikeMix.of(bench.book, tested, new BigDecimal("1.9"));
        assertThat(near).extracting(one -> one.mixId().text()).containsExactly("M-9", "M-2");
        assertThat(near.get(0).group()).isEmpty();
        assertThat(near.get(1).group()).contains(new GroupId("G-1"));
    }
}
