package porebench.desk.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.desk.Refused;
import porebench.desk.form.TwoVersions;
import porebench.evidence.plan.PlannedTest;
import porebench.method.Problem;
import porebench.record.SamplePlans;
import porebench.record.TestPlan;
import porebench.record.book.Draft;
import porebench.record.column.PlanColumns;

/**
 * Arranging the tests of the demo laboratory: HG-103 lapsed, HG-106 has another stone, HG-108 never had a factor, HG-102 is due. Today is
 * Wednesday the 25th of November 2026; the workdays left of seven are 25, 26, 27, 30 and 1 December.
 */
class PlanModelTest {
    private PlanDesk made;
    private PlanModel model;

    @BeforeEach
    void begin() {
        made = new PlanDesk();
        model = made.model();
    }

    private List<String> lines() {
        return model.lines().stream()
                .map(line -> line.day().substring(8) + " " + line.mix() + " "
                        + line.mark().symbol())
                .toList();
    }

    private void save() {
        assertThat(model.trySaving()).isTrue();
        assertThat(Refused.by(out -> model.save("arranged", out))).isEmpty();
    }

    @Test
    void whatIsProposedIsOnViewAndNotChanged() {
        assertThat(model.from()).contains(PlanDesk.TODAY);
        assertThat(lines()).containsExactly("25 HG-103 asked", "26 HG-106 asked", "27 HG-108 asked", "30 HG-102 asked");
        assertThat(model.lines()).noneMatch(PlanLine::isArranged);
        assertThat(model.history().isChanged()).isFalse();
        assertThat(model.canSave()).isTrue();
        assertThat(model.isNew()).isTrue();
    }

    @Test
    void aTestMovesPastOthersAndToOtherDaysAndEachStepIsTakenBack() {
        model.move("HG-106", -1);
        assertThat(lines()).containsExactly("25 HG-103 asked", "25 HG-106 asked", "27 HG-108 asked", "30 HG-102 asked");
        model.move("HG-106", -1);
        assertThat(lines()).startsWith("25 HG-106 asked", "25 HG-103 asked");
        // It is the first of the first day: there is nowhere to go.
        model.move("HG-106", -1);
        assertThat(lines()).startsWith("25 HG-106 asked", "25 HG-103 asked");
        model.move("HG-106", 1);
        assertThat(lines()).startsWith("25 HG-103 asked", "25 HG-106 asked");
        model.moveDay("HG-103", 1);
        assertThat(lines()).startsWith("25 HG-106 asked", "26 HG-103 asked");
        for (int day = 0; day < 9; day++) {
            model.moveDay("HG-103", 1);
        }
        assertThat(lines()).endsWith("30 HG-102 asked", "01 HG-103 asked");
        assertThat(model.history().undoLabel()).contains("moving HG-103");
        model.history().undo();
        model.history().undo();
        assertThat(lines()).containsExactly("25 HG-103 asked", "26 HG-106 asked", "27 HG-108 asked", "30 HG-102 asked");
        assertThat(model.history().isChanged()).isFalse();
    }

    @Test
    void aTestIsDraggedToThePlaceOfAnotherOnItsDay() {
        model.moveTo("HG-102", "HG-106");
        assertThat(lines()).containsExactly("25 HG-103 asked", "26 HG-102 asked", "26 HG-106 asked", "27 HG-108 asked");
        assertThat(model.chosen()).map(PlanLine::mix).contains("HG-102");
        model.history().undo();
        model.moveTo("HG-103", "HG-108");
        assertThat(lines()).containsExactly("26 HG-106 asked", "27 HG-108 asked", "27 HG-103 asked", "30 HG-102 asked");
        model.history().undo();
        // Nothing is moved to itself, to a mix that is left out, or to one that is not there.
        model.leaveOut("HG-102", "the plant stands still");
        List<String> before = lines();
        model.moveTo("HG-103", "HG-103");
        model.moveTo("HG-103", "HG-102");
        model.moveTo("HG-102", "HG-103");
        model.moveTo("HG-103", "HG-999");
        assertThat(lines()).isEqualTo(before);
    }

    @Test
    void whatIsTypedIsKeptWithWhatIsOnViewAndReadBack() {
        model.type("HG-106", PlanColumns.WHO, "M. Quist");
        model.type("HG-106", PlanColumns.TRIALS, "5");
        model.type("HG-106", PlanColumns.METER, "B-2");
        model.type("HG-106", PlanColumns.DAY, "2026-11-30");
        model.type("HG-106", PlanColumns.REMARK, "after noon");
        assertThat(model.problems()).isEmpty();
        save();
        assertThat(made.kept()).hasSize(1);
        assertThat(made.kept().get(0).rows())
                .contains(SamplePlans.row(
                        "HG-106", LocalDate.of(2026, 11, 30), "M. Quist", 5, "B-2", TestPlan.Mark.ASKED, "after noon"));
        assertThat(made.kept().get(0).rows())
                .hasSize(4)
                .allMatch(row -> row.meter().isPresent());
        assertThat(model.isNew()).isFalse();
        assertThat(model.history().isChanged()).isFalse();
        assertThat(model.canSave()).isFalse();
        assertThat(model.base().orElseThrow().stamp().who()).isEqualTo("R. Vale");
        // The page of another day finds it again, though it began before.
        assertThat(made.model().lines()).hasSize(4).allMatch(PlanLine::isArranged);
        // What is worked out follows what is arranged.
        PlannedTest apron = model.lines().stream()
                .filter(line -> line.mix().equals("HG-106"))
                .flatMap(line -> line.test().stream())
                .findFirst()
                .orElseThrow();
        assertThat(apron.trials()).isEqualTo(5);
        assertThat(apron.doubts()).extracting(Problem::code).containsExactly("plan.meter-not-trusted");
    }

    @ParameterizedTest
    @CsvSource({
        "TRIALS, 0, 1",
        "TRIALS, 101, 1",
        "TRIALS, x, 1",
        "TRIALS, 100, 0",
        "DAY, 2026-12-02, 1",
        "DAY, soon, 1",
        "DAY, 2026-12-01, 0",
        "METER, X-9, 1",
        "METER, B-1, 0"
    })
    void whatAFileMayNotSayIsRefusedHereToo(String column, String text, int problems) {
        var of = switch (column) {
            case "TRIALS" -> PlanColumns.TRIALS;
            case "DAY" -> PlanColumns.DAY;
            default -> PlanColumns.METER;
        };
        model.type("HG-106", of, text);
        assertThat(model.problems("HG-106", of)).hasSize(problems);
        assertThat(model.problems("HG-103", of)).isEmpty();
        assertThat(model.trySaving()).isEqualTo(problems == 0);
    }

    @Test
    void aMixIsPutOnItByHandOnceAndMustBeKnown() {
        model.choose(Optional.of("HG-108"));
        assertThat(model.add(" HG-105 ")).isEmpty();
        assertThat(lines()).contains("27 HG-105 by-hand");
        assertThat(model.chosen().orElseThrow().mix()).isEqualTo("HG-105");
        assertThat(model.add("HG-105").map(Problem::code)).contains("plan.mix-twice");
        assertThat(model.add("HG-999").map(Problem::code)).contains("plan.unknown-mix");
        assertThat(model.add(" ")).isPresent();
        // Of a chosen mix that is left out no day is taken over.
        model.leaveOut("HG-103", "no stone");
        model.choose(Optional.of("HG-103"));
        assertThat(model.add("HG-104")).isEmpty();
        assertThat(lines()).startsWith("26 HG-106 asked", "26 HG-104 by-hand");
        save();
        assertThat(made.kept().get(0).rows()).hasSize(6);
    }

    @Test
    void whatIsLeftOutStandsLastWithItsReasonAndIsPutBack() {
        int fetched = model.shown().orElseThrow().fetches().size();
        model.leaveOut("HG-103", "the plant stands still");
        assertThat(lines()).endsWith("25 HG-103 left-out");
        assertThat(model.shown().orElseThrow().fetches().size()).isLessThanOrEqualTo(fetched);
        assertThat(model.shown().orElseThrow().leftOut()).hasSize(1);
        save();
        assertThat(lines()).endsWith("25 HG-103 left-out");
        model.putBack("HG-103");
        assertThat(lines()).startsWith("25 HG-103 asked");
        model.type("HG-103", PlanColumns.REMARK, "");
        model.leaveOut("HG-103", " ");
        assertThat(model.trySaving()).isFalse();
    }

    @Test
    void whatBecamePressingSinceIsShownAsNewAndTakenOverBySaving() {
        assertThat(made.book.keep(
                        List.of(Draft.of(SamplePlans.plan(
                                PlanDesk.TODAY, SamplePlans.row("HG-102", PlanDesk.TODAY.plusDays(1))))),
                        "M. Ash",
                        "arranged"))
                .isEmpty();
        made.desk.refresh();
        model.follow();
        assertThat(lines()).containsExactly("25 HG-103 asked", "25 HG-106 asked", "25 HG-108 asked", "26 HG-102 asked");
        assertThat(model.lines()).filteredOn(line -> !line.isArranged()).hasSize(3);
        assertThat(model.canSave()).isTrue();
        save();
        assertThat(made.kept()).hasSize(2);
        assertThat(made.kept().get(1).rows()).hasSize(4);
    }

    /** Two people: the newer version is known, both stand side by side, and what was typed is not lost. */
    @Test
    void aVersionThatSomebodyElseKeptIsPutBesideThisOne() {
        save();
        model.type("HG-106", PlanColumns.WHO, "M. Quist");
        TestPlan theirs = new TestPlan(
                PlanDesk.TODAY,
                made.kept().get(0).rows().stream()
                        .map(row -> row.mixId().text().equals("HG-108")
                                ? SamplePlans.row("HG-108", row.day(), "T. Ellwand", 1, "B-1", TestPlan.Mark.ASKED, "")
                                : row)
                        .toList());
        assertThat(made.book.keep(List.of(new Draft(theirs, 1)), "M. Ash", "moved"))
                .isEmpty();
        made.desk.refresh();
        assertThat(model.newer()).isPresent();
        TwoVersions both = model.beside(model.newer().orElseThrow());
        assertThat(both.lines()).extracting(TwoVersions.Line::name).containsExactly("HG-106: who", "HG-108: who");
        model.goOnFrom(
                model.newer().orElseThrow(),
                "both",
                both.chosen(
                        both.lines().stream().map(TwoVersions.Line::isTheirs).toList()));
        save();
        assertThat(made.kept()).hasSize(3);
        assertThat(made.kept().get(2).rows())
                .extracting(TestPlan.Row::who)
                .containsExactlyInAnyOrder("", "M. Quist", "T. Ellwand", "");
    }

    /** What was arranged and not saved is there again when the days are turned to again. */
    @Test
    void otherDaysAreAnotherPlanAndADraftOutlivesThem() {
        model.type("HG-106", PlanColumns.WHO, "M. Quist");
        model.show(PlanDesk.TODAY.plusDays(7));
        assertThat(model.history().isChanged()).isFalse();
        assertThat(model.lines()).isNotEmpty().allMatch(line -> line.day().compareTo("2026-12-02") >= 0);
        model.show(PlanDesk.TODAY);
        assertThat(model.history().isChanged()).isTrue();
        model.dropDraft();
        assertThat(model.history().isChanged()).isFalse();
        assertThat(model.lines()).noneMatch(PlanLine::isArranged);
        save();
        model.type("HG-106", PlanColumns.WHO, "M. Quist");
        model.dropDraft();
        assertThat(model.lines())
                .allMatch(line -> line.typed().text(PlanColumns.WHO).isEmpty());
    }

    @Test
    void thePlanInWhichTodayLiesIsOpenedFirst() {
        LocalDate sunday = PlanDesk.TODAY.minusDays(3);
        assertThat(made.book.keep(
                        List.of(Draft.of(SamplePlans.plan(sunday, SamplePlans.row("HG-102", sunday)))), "M. Ash", "x"))
                .isEmpty();
        made.desk.refresh();
        assertThat(made.model().from()).contains(sunday);
    }

    @Test
    void theFiguresBesideItAreRememberedAndMustBeRight() {
        PlanFields fields = model.fields();
        assertThat(fields.figures()).isEqualTo(new PlanAsked.Figures(10, 10, OptionalDouble.empty()));
        fields.type(PlanFields.Field.MOST, "2");
        fields.type(PlanFields.Field.SPARE, "0");
        fields.type(PlanFields.Field.SPREAD, "0.6");
        model.follow();
        assertThat(lines()).containsExactly("25 HG-103 asked", "27 HG-106 asked");
        assertThat(model.shown().orElseThrow().left()).isEqualTo(2);
        assertThat(made.model().fields().figures()).isEqualTo(new PlanAsked.Figures(2, 0, OptionalDouble.of(0.6)));
        fields.type(PlanFields.Field.MOST, "0");
        assertThat(fields.problems()).extracting(Problem::code).containsExactly("plan.room");
        fields.type(PlanFields.Field.MOST, "2.5");
        assertThat(fields.problems()).extracting(Problem::code).containsExactly("plan.room");
        fields.type(PlanFields.Field.MOST, "501");
        assertThat(fields.problems()).extracting(Problem::code).containsExactly("plan.room");
        fields.type(PlanFields.Field.MOST, "x");
        fields.type(PlanFields.Field.SPARE, "201");
        fields.type(PlanFields.Field.SPREAD, "-1");
        assertThat(fields.problems()).hasSize(3);
        assertThat(fields.figures()).isEqualTo(new PlanAsked.Figures(2, 0, OptionalDouble.of(0.6)));
    }
}
