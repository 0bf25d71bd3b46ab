package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.issue.GroupIssuing;
import porebench.method.Answer;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.id.MixId;
import porebench.store.Books;

/** That a group is no way round the steps by which a laboratory brings a factor in force. */
class GroupStepsTest {
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
        group.close();
    }

    /** A group has no drafts of its own: where the profile asks for them its factor does not come into force. */
    @Test
    void noFactorOfAGroupGoesRoundTheStepsThatTheProfileAsksFor() {
        Profile own = Profiles.standard()
                .copyAs("own", "Own figures")
                .with(FigureName.FACTOR_STEPS, new Figure("checked", "Own choice", Mark.LABORATORY));
        Books.keep(bench.book, new LaboratoryProfile(own));
        for (MixId mix : List.of(Bench.MIX, new MixId("M-2"), new MixId("M-3"))) {
            MixDesign design =
                    bench.book.latest(MixDesign.class, mix.text()).orElseThrow().value();
            Books.correct(
                    bench.book,
                    new MixDesign(
                            design.id(),
                            design.title(),
                            design.batch(),
                            design.soakMinutes(),
                            design.airTolerancePercent(),
                            own.id(),
                            design.remarks(),
                            design.plant()));
        }
        Answer<GroupIssuing.Issued> answer = group.decided(Bench.FIRST, Bench.START);
        assertThat(answer.value()).isEmpty();
        assertThat(Books.codes(answer.problems())).contains("issue.steps-needed");
    }
}
