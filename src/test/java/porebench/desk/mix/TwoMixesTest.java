package porebench.desk.mix;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.MixDesk;
import porebench.desk.Refused;
import porebench.desk.form.TwoVersions;
import porebench.desk.form.TwoVersions.Line;
import porebench.desk.form.TypedDraft;
import porebench.method.Role;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.column.MixColumns;

/** Two people edit one mix: what each did stands beside what the other did, line by line, and comes together as one chooses. */
class TwoMixesTest {
    private final MixDesk mixDesk = new MixDesk(Locale.ENGLISH);
    private final MixDesk otherDesk = mixDesk;
    private MixModel model;
    private MixModel there;

    /** Mix M-1 of the sand S-1 and the stone S-2 is open at two desks. */
    @BeforeEach
    void open() {
        mixDesk.keepElsewhere(Draft.of(Samples.source("S-3", Role.COARSE, "1")));
        mixDesk.select("M-1");
        model = new MixModel(mixDesk.desk);
        there = new MixModel(otherDesk.desk);
    }

    /** Keeps what was typed at the other desk, while the draft of this one is there. */
    private TwoVersions keptThere(Runnable typing) {
        TypedDraft mine = model.draft();
        model.history().restart(model.history().saved());
        mixDesk.desk.unsaved().drop("mix/M-1");
        typing.run();
        MixDesign other = there.reading().mix().orElseThrow();
        Version<MixDesign> before = there.base().orElseThrow();
        there.dropDraft();
        model.history().update("Mine", mine);
        mixDesk.keepElsewhere(Draft.correcting(before, other));
        mixDesk.desk.refresh();
        return model.beside(model.newer().orElseThrow());
    }

    private static List<String> names(TwoVersions both) {
        return both.lines().stream().map(Line::name).toList();
    }

    private MixDesign saved(TwoVersions both, Predicate<Line> takesTheirs) {
        List<Boolean> choice = new ArrayList<>();
        both.lines().forEach(line -> choice.add(takesTheirs.test(line)));
        model.goOnFrom(model.newer().orElseThrow(), "both", both.chosen(choice));
        assertThat(Refused.by(out -> model.save("both", out))).isEmpty();
        return mixDesk.book.latest(MixDesign.class, "M-1").orElseThrow().value();
    }

    private static List<String> rows(MixDesign mix) {
        return mix.batch().constituents().stream()
                .map(one -> one.name() + " " + one.mass() + " "
                        + one.moisturePercent().map(Object::toString).orElse("-"))
                .toList();
    }

    @Test
    void whatEachChangedAloneStandsInTheEndAndNothingIsLost() {
        model.type(MixColumns.TITLE, "Kerb");
        model.constituents().type(0, MixColumns.MASS, "712");
        TwoVersions both = keptThere(() -> {
            there.type(MixColumns.REMARKS, "wetter");
            there.constituents().type(0, MixColumns.MOISTURE, "4.2");
            there.constituents().type(1, MixColumns.MASS, "1040");
        });
        assertThat(both.lines())
                .containsExactly(
                        new Line("Title", "Mix M-1", "Mix M-1", "Kerb", false),
                        new Line("Remarks", "", "wetter", "", true),
                        new Line("Sand, mass", "700 kg", "700 kg", "712 kg", false),
                        new Line("Sand, moisture", "", "4.2", "", true),
                        new Line("Stone, mass", "1050 kg", "1040 kg", "1050 kg", true));
        MixDesign kept = saved(both, Line::isTheirs);
        assertThat(kept.title()).isEqualTo("Kerb");
        assertThat(kept.remarks()).isEqualTo("wetter");
        assertThat(rows(kept)).containsExactly("Sand 712 kg 4.2", "Stone 1040 kg -");
    }

    @Test
    void whatBothChangedIsYoursUntilTheirsIsChosen() {
        model.constituents().type(1, MixColumns.MASS, "1060 lb");
        TwoVersions both = keptThere(() -> there.constituents().type(1, MixColumns.MASS, "1040"));
        assertThat(both.lines()).containsExactly(new Line("Stone, mass", "1050 kg", "1040 kg", "1060 lb", false));
        assertThat(both.chosen(List.of(false))
                        .rows(MixColumns.CONSTITUENTS)
                        .get(1)
                        .text(MixColumns.MASS))
                .isEqualTo("1060");
        assertThat(rows(saved(both, line -> true))).containsExactly("Sand 700 kg -", "Stone 1040 kg -");
    }

    @Test
    void constituentsThatOneAddedOrTookAwayAreLinesOfTheirOwn() {
        int mine = model.constituents().addRow(0);
        model.constituents().type(mine, MixColumns.SOURCE, "S-3");
        model.constituents().type(mine, MixColumns.MASS, "300");
        TwoVersions both = keptThere(() -> {
            there.constituents().type(0, MixColumns.MASS, "690");
            there.constituents().removeRow(1);
        });
        assertThat(names(both)).containsExactly("Sand, mass", "Pit of S-3", "Stone");
        assertThat(both.lines()).extracting(Line::isTheirs).containsExactly(true, false, true);
        assertThat(both.lines().get(2).theirs()).isEmpty();
        assertThat(both.lines().get(2).yours()).contains("S-2", "1050 kg");
        assertThat(both.chosen(List.of(true, true, true)).rows(MixColumns.CONSTITUENTS))
                .hasSize(1);
        assertThat(rows(saved(both, line -> !line.name().equals("Stone") && line.isTheirs())))
                .containsExactly("Sand 690 kg -", "Pit of S-3 300 kg -", "Stone 1050 kg -");
    }

    @Test
    void anotherOrderAndAnotherSourceAreNoOtherConstituents() {
        model.constituents().type(1, MixColumns.SOURCE, "S-3");
        TwoVersions both = keptThere(() -> {
            there.constituents().moveRow(0, 1);
            there.constituents().type(1, MixColumns.MASS, "690");
        });
        assertThat(names(both)).containsExactly("Stone, source", "Sand, mass");
        assertThat(rows(saved(both, Line::isTheirs))).containsExactly("Stone 1050 kg -", "Sand 690 kg -");
    }

    @Test
    void undoingBringsBackTheDraftOnTheVersionThatItWasTypedOn() {
        model.type(MixColumns.TITLE, "Kerb");
        TypedDraft typed = model.draft();
        TwoVersions both = keptThere(() -> there.type(MixColumns.REMARKS, "wetter"));
        model.goOnFrom(model.newer().orElseThrow(), "both", both.chosen(List.of(false, true)));
        assertThat(model.base().map(Version::number)).contains(2);
        model.history().undo();
        assertThat(model.draft()).isEqualTo(typed);
        assertThat(model.base().map(Version::number)).contains(1);
        assertThat(model.newer()).isPresent();
        MixModel again = new MixModel(mixDesk.desk);
        assertThat(again.draft()).isEqualTo(typed);
        assertThat(again.base().map(Version::number)).contains(1);
    }

    @Test
    void whatIsDroppedForTheirVersionComesBackByUndoing() {
        model.type(MixColumns.TITLE, "Kerb");
        TypedDraft typed = model.draft();
        keptThere(() -> there.type(MixColumns.REMARKS, "wetter"));
        model.dropDraft();
        assertThat(model.draft().text(MixColumns.REMARKS)).isEqualTo("wetter");
        assertThat(model.draft().text(MixColumns.TITLE)).isEqualTo("Mix M-1");
        assertThat(model.history().isChanged()).isFalse();
        assertThat(model.newer()).isEmpty();
        model.history().undo();
        assertThat(model.draft()).isEqualTo(typed);
        assertThat(model.newer().map(Version::number)).contains(2);
    }
}
