package porebench.desk.mix;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.MixDesk;
import porebench.desk.Named;
import porebench.desk.Refused;
import porebench.desk.form.TwoVersions.Line;
import porebench.method.Role;
import porebench.record.Determination;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.column.MixColumns;
import porebench.record.id.MixId;

/** A mix design begun as a copy of another one, and two of them side by side. */
class MixCopyTest {
    private final MixDesk mixDesk = new MixDesk(Locale.ENGLISH);
    private final MixModel model = new MixModel(mixDesk.desk);

    @BeforeEach
    void open() {
        mixDesk.keepElsewhere(
                Draft.of(Samples.source("S-3", Role.COARSE, "1")), Draft.of(Samples.determination("D-1", "M-1")));
        mixDesk.select("M-1");
        model.followDesk();
    }

    private MixDesign kept(String id) {
        return mixDesk.book.latest(MixDesign.class, id).orElseThrow().value();
    }

    @Test
    void aCopyHasTheDesignButNotTheNameAndNothingThatWasDoneWithTheMix() {
        model.beginCopy();
        assertThat(model.isNew()).isTrue();
        assertThat(model.isEmpty()).isFalse();
        assertThat(model.typedName()).isEmpty();
        model.type(MixColumns.ID, "M-9");
        assertThat(Refused.by(out -> model.save(model.copied().orElseThrow(), out)))
                .isEmpty();
        MixDesign one = kept("M-1");
        MixDesign copy = kept("M-9");
        assertThat(copy.id()).isEqualTo(new MixId("M-9"));
        assertThat(copy.batch()).isEqualTo(one.batch());
        assertThat(copy.title()).isEqualTo(one.title());
        assertThat(copy.profileId()).isEqualTo(one.profileId());
        assertThat(mixDesk.book.latest(Determination.class))
                .allSatisfy(each -> assertThat(each.value().mixId()).isEqualTo(one.id()));
    }

    @Test
    void theLabBookSaysOfWhatItIsACopyByWhomAndWhen() {
        model.beginCopy();
        model.type(MixColumns.ID, "M-9");
        Refused.by(out -> model.save(model.copied().orElseThrow(), out));
        Version<MixDesign> copy = mixDesk.book.latest(MixDesign.class, "M-9").orElseThrow();
        assertThat(copy.stamp().why()).isEqualTo("Copied from M-1, version 1");
        assertThat(copy.stamp().who()).isEqualTo("R. Vale");
        assertThat(copy.number()).isEqualTo(1);
    }

    @Test
    void aCopyTakesWhatIsSavedAndNotWhatIsTyped() {
        String saved = model.draft().text(MixColumns.TITLE);
        model.type(MixColumns.TITLE, "typed over");
        model.beginCopy();
        assertThat(model.draft().text(MixColumns.TITLE)).isEqualTo(saved);
    }

    @Test
    void anotherDraftIsNoCopy() {
        model.beginCopy();
        assertThat(model.copied()).isPresent();
        model.dropDraft();
        assertThat(model.copied()).isEmpty();
        model.begin();
        assertThat(model.copied()).isEmpty();
    }

    @Test
    void aNewMixThatWasBegunIsDroppedOnlyByAYes() {
        MixPage page = new MixPage(mixDesk.desk, mix -> {});
        page.begin();
        MixModel typing = new MixModel(mixDesk.desk);
        typing.begin();
        typing.type(MixColumns.ID, "N-1");
        mixDesk.select("M-1");
        mixDesk.asker.confirmations.add(false);
        press(page, "mix.copy");
        assertThat(mixDesk.desk.unsaved().find("mix/")).isPresent();
        assertThat(mixDesk.desk.selected()).contains(new MixId("M-1"));
        mixDesk.asker.confirmations.add(true);
        press(page, "mix.copy");
        assertThat(mixDesk.desk.unsaved().find("mix/")).isEmpty();
        assertThat(mixDesk.desk.selected()).isEmpty();
        assertThat(mixDesk.asker.questions).hasSize(2).allMatch(asked -> asked.contains("Drop it"));
    }

    private static void press(MixPage page, String name) {
        AbstractButton button = Named.in((JComponent) page.component(), AbstractButton.class, name);
        assertThat(button.isEnabled()).isTrue();
        button.doClick();
    }

    private MixBeside beside(MixDesign other) {
        mixDesk.keepElsewhere(Draft.of(other));
        return MixBeside.of(
                model,
                model.base().orElseThrow(),
                mixDesk.book.latest(MixDesign.class, other.recordId()).orElseThrow());
    }

    private static Optional<Line> line(MixBeside both, String name) {
        return both.lines().stream().filter(line -> line.name().equals(name)).findFirst();
    }

    /** 700 and 1050 kg in 1.00 m3 are 4.900 and 7.350 kg in 7 L; 730 and 1020 kg are 5.110 and 7.140 kg. */
    @Test
    void whatIsWeighedOutForEachStandsSideBySide() {
        MixBeside both = beside(Samples.mix(
                "M-2",
                Samples.constituent("Sand", Role.FINE, "S-1", "730"),
                Samples.constituent("Stone", Role.COARSE, "S-2", "1020")));
        assertThat(line(both, "Fine aggregate to weigh out, bowl of 7 L"))
                .contains(new Line("Fine aggregate to weigh out, bowl of 7 L", "4900 g", "4900 g", "5110 g", false));
        assertThat(line(both, "Coarse aggregate to weigh out, bowl of 7 L"))
                .hasValueSatisfying(
                        line -> assertThat(List.of(line.theirs(), line.yours())).containsExactly("7350 g", "7140 g"));
        assertThat(both.lines()).extracting(Line::name).anyMatch(name -> name.contains("Sand"));
        assertThat(both.meaning().get(0)).startsWith("Sample: the aggregates differ");
        // 700 of 1750 are 40.0 %, 730 are 41.7 %.
        assertThat(both.meaning()).anyMatch(said -> said.contains("40.0") && said.contains("41.7"));
    }

    @Test
    void theSameStonesInTheSameAmountsMakeOneSampleButNotYetOneFactor() {
        MixBeside both = beside(Samples.mix("M-3", "S-1", "S-2"));
        assertThat(both.meaning())
                .containsExactly(
                        "Sample: the same aggregates in the same amounts; one correction sample is as good as the other.",
                        "Factor: alike within the profile's tolerance. The factor of one holds for the other "
                                + "only where a group says so (page Groups).");
        assertThat(line(both, "Factor that may be used"))
                .hasValueSatisfying(
                        line -> assertThat(List.of(line.theirs(), line.yours())).containsExactly("none", "none"));
        assertThat(both.lines()).noneMatch(line -> line.name().contains("Sand"));
    }

    @Test
    void anotherSourceIsAnotherFactorAndItIsSaidWhy() {
        MixBeside both = beside(Samples.mix("M-4", "S-1", "S-3"));
        assertThat(both.meaning()).hasSizeGreaterThan(2);
        assertThat(both.meaning().get(1)).startsWith("Factor: the factor of one does not hold for the other");
        assertThat(both.meaning().get(2)).contains("S-3");
    }
}
