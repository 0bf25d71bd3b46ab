package porebench.desk.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.chart.factor.CoverageOverTime;
import porebench.desk.DeskModel;
import porebench.desk.Settings;
import porebench.evidence.RegisterRow;
import porebench.evidence.paper.RegisterList;
import porebench.exchange.DemoCards;
import porebench.method.Problem;
import porebench.port.RegisterTable;
import porebench.record.book.MemoryLabBook;

/** The model of the factor register on the demo laboratory, without a display. */
class RegisterModelTest {
    private final DeskModel desk = RegisterModelsTest.desk(Locale.ENGLISH);

    @Test
    void theRegisterLeavesOutWhatNeedsNoAttention() {
        RegisterModel model = new RegisterModel(desk, RecordPage.texts(desk), Settings.inMemory());
        assertThat(model.rows()).hasSize(8);
        model.want(Wanted.ATTENTION);
        assertThat(model.rows())
                .extracting(row -> row.mixId().text())
                .contains("HG-102", "HG-103", "HG-105", "HG-106", "HG-108")
                .doesNotContain("HG-101");
        assertThat(model.summary()).startsWith("8 mixes: 3 in force");
        assertThat(List.of(model.chosen().orElseThrow().mixId().text())).containsExactly("HG-102");
    }

    /** Of the demo's cards one is out on a factor that was replaced: revision 1 of HG-101, with truck 7. */
    @Test
    void aCardStillOutOnAnOldFactorIsAnAlarm() {
        MemoryLabBook book = new MemoryLabBook(desk.tools().clock());
        new DemoCards().fill(book);
        DeskModel cards = RegisterModelsTest.desk(book);
        RegisterModel model = new RegisterModel(cards, RecordPage.texts(cards), Settings.inMemory());
        assertThat(model.alarmWords()).startsWith("Alarm: cards still out whose factor no longer holds: 1 (mixes: 1).");
        model.want(Wanted.CARDS);
        RegisterRow row = model.rows().get(0);
        assertThat(model.rows()).hasSize(1);
        assertThat(row.mixId().text()).isEqualTo("HG-101");
        assertThat(model.cardWords(row)).isEqualTo("1 to come back");
        assertThat(model.missingWords(row)).contains("truck 7 (HG-101/r1/2)");
        RegisterList printed = model.list(model.rows(), model.alarms(), book.head());
        assertThat(printed.lines().get(0).missing()).as("said once").containsOnlyOnce(model.missingWords(row));
        assertThat(RegisterTable.of(printed).rows().get(0)).endsWith("1");
        model.want(Wanted.ATTENTION);
        assertThat(model.rows()).extracting(one -> one.mixId().text()).contains("HG-101");
        RegisterModel without = register(Settings.inMemory());
        assertThat(without.alarmWords()).isEmpty();
        assertThat(without.cardWords(without.rows().get(0))).isEmpty();
        without.want(Wanted.CARDS);
        assertThat(without.rows()).isEmpty();
    }

    private RegisterModel register(Settings settings) {
        return new RegisterModel(desk, RecordPage.texts(desk), settings);
    }

    @Test
    void theRegisterSaysHowManyMixesAreCoveredAndSinceWhenTheOthersAreNot() {
        RegisterModel model = register(Settings.inMemory());
        assertThat(model.coverageWords()).isEqualTo("4 of 8 mixes have a factor that may be used (50 %)");
        model.want(Wanted.WITHOUT);
        assertThat(model.rows())
                .extracting(row -> row.mixId().text())
                .containsExactly("HG-103", "HG-105", "HG-106", "HG-108");
        assertThat(model.rows().get(0).uncoveredSince()).contains(LocalDate.of(2026, 9, 3));
        assertThat(model.rows().get(1).uncoveredSince()).contains(LocalDate.of(2026, 5, 4));
        assertThat(model.rows().get(3).uncoveredSince()).isEmpty();
        model.want(Wanted.DUE);
        assertThat(model.rows()).extracting(row -> row.mixId().text()).containsExactly("HG-102", "HG-103");
        CoverageOverTime overTime = model.overTime().orElseThrow();
        CoverageOverTime.Step last = overTime.steps().get(overTime.steps().size() - 1);
        assertThat(last).isEqualTo(new CoverageOverTime.Step(desk.tools().today(), 8, 4));
    }

    @Test
    void aViewComesBackAsItWasKeptAndIsForgottenAlone() {
        Settings settings = Settings.inMemory();
        RegisterModel model = register(settings);
        assertThat(model.keep(new RegisterView("North plant", Wanted.DUE, "velmar", "-2"))
                        .value())
                .isPresent();
        model.keep(new RegisterView("Audit", Wanted.WITHOUT, "", "")).value().orElseThrow();
        assertThat(register(settings).views())
                .containsExactly(
                        new RegisterView("North plant", Wanted.DUE, "velmar", "-2"),
                        new RegisterView("Audit", Wanted.WITHOUT, "", ""));
        model.keep(new RegisterView(" north PLANT ", Wanted.ALL, "", ""))
                .value()
                .orElseThrow();
        assertThat(model.views())
                .containsExactly(
                        new RegisterView("Audit", Wanted.WITHOUT, "", ""),
                        new RegisterView("north PLANT", Wanted.ALL, "", ""));
        model.forget("Audit");
        assertThat(model.views()).extracting(RegisterView::name).containsExactly("north PLANT");
    }

    @Test
    void aViewWithoutANameAndOneTooManyAreRefused() {
        RegisterModel model = register(Settings.inMemory());
        assertThat(model.keep(new RegisterView("  ", Wanted.ALL, "", "")).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.field()).isEqualTo("view"));
        assertThat(model.keep(new RegisterView("x".repeat(41), Wanted.ALL, "", ""))
                        .problems())
                .extracting(Problem::code)
                .containsExactly("register.view-name-long");
        assertThat(model.keep(new RegisterView("long", Wanted.ALL, "x".repeat(201), ""))
                        .problems())
                .extracting(Problem::code)
                .containsExactly("register.view-words-long");
        for (int i = 1; i <= 20; i++) {
            assertThat(model.keep(new RegisterView("view " + i, Wanted.ALL, "", ""))
                            .value())
                    .isPresent();
        }
        assertThat(model.keep(new RegisterView("view 21", Wanted.ALL, "", "")).problems())
                .extracting(Problem::code)
                .containsExactly("register.views-full");
        assertThat(model.views()).hasSize(20);
        assertThat(model.keep(new RegisterView("view 20", Wanted.DUE, "", "")).value())
                .isPresent();
    }

    @Test
    void whatIsRememberedAndNoViewIsLeftOut() {
        Settings settings = Settings.inMemory();
        settings.put("register.views", "rubbish\u001ea\u001fnone-such\u001f\u001f\u001eGood\u001fdue\u001f\u001f1");
        assertThat(register(settings).views()).containsExactly(new RegisterView("Good", Wanted.DUE, "", "1"));
    }
}
