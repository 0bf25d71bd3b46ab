package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.desk.MixDesk;
import porebench.desk.Unsaved;
import porebench.record.id.MixId;

class TypedPagesTest {
    private final Unsaved unsaved = new MixDesk(Locale.ENGLISH).desk.unsaved();

    private Set<String> of(String mix) {
        return TypedPages.of(
                unsaved, Optional.of(mix).filter(id -> !id.isEmpty()).map(MixId::new));
    }

    @ParameterizedTest
    @CsvSource({
        "mix/M-1, mix",
        "trial/M-1, trials",
        "'trial/M-1\tT-1', trials",
        "issue/M-1, factor",
        "source/S-1, sources",
        "group/, groups",
        "meter/, meters",
        "calibration/B-1, meters",
        "equipment/E, equipment",
        "production/P, production",
        "reading/, readings",
        "plan/2026-11-30, plan",
        "study/OPERATORS, studies"
    })
    void whatIsTypedIsOnItsPage(String name, String page) {
        assertThat(of("M-1")).isEmpty();
        unsaved.keep(name, "typed");
        assertThat(of("M-1")).containsExactly(page);
        unsaved.drop(name);
        assertThat(of("M-1")).isEmpty();
    }

    @Test
    void whatIsTypedOfAnotherMixIsNotOnTheSteps() {
        unsaved.keep("mix/M-10", "typed");
        unsaved.keep("trial/M-10", "typed");
        assertThat(of("M-1")).isEmpty();
        assertThat(of("M-10")).containsExactly("mix", "trials");
    }

    @Test
    void aNewMixIsOnTheFirstStepWhileNoneIsSelected() {
        unsaved.keep("mix/", "typed");
        assertThat(of("")).containsExactly("mix");
        assertThat(of("M-1")).isEmpty();
    }
}
