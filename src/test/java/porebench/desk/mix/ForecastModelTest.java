package porebench.desk.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import porebench.chart.forecast.ForecastCheck;
import porebench.desk.MixDesk;
import porebench.desk.form.UnitSystem;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.CardPrint;
import porebench.record.Kept;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.column.MixColumns;
import porebench.record.id.MixId;
import porebench.store.Books;

/** The forecast beside the draft of a mix design. */
class ForecastModelTest {
    private static final int[] SAND = {620, 780, 700, 640, 800, 720};
    private static final String[] GAUGE = {"6.4", "6.5", "6.4", "6.5", "6.3", "6.5"};

    private final MixDesk mixDesk = new MixDesk(Locale.ENGLISH);
    private final MixModel mix = new MixModel(mixDesk.desk);
    private final ForecastModel model = new ForecastModel(mix);

    /** Keeps six mixes of one sand and one stone, each with two trials. */
    private void keepTrials() {
        List<Kept> mixes = new ArrayList<>();
        List<Kept> made = new ArrayList<>();
        List<Kept> trials = new ArrayList<>();
        for (int i = 0; i < SAND.length; i++) {
            String id = "T-" + i;
            mixes.add(Samples.mix(
                    id,
                    Samples.constituent("Sand", Role.FINE, "S-1", Integer.toString(SAND[i])),
                    Samples.constituent("Stone", Role.COARSE, "S-2", Integer.toString(1750 - SAND[i]))));
            made.add(Samples.determination(id + "/1", id));
            trials.add(Samples.trial(id + "a", id, id + "/1", GAUGE[i]));
            trials.add(Samples.trial(id + "b", id, id + "/1", i % 2 == 0 ? "6.4" : "6.5"));
        }
        Books.keep(mixDesk.book, mixes);
        Books.keep(mixDesk.book, made);
        Books.keep(mixDesk.book, trials);
        mixDesk.desk.refresh();
    }

    private ForecastModel.Shown asked() {
        AtomicInteger told = new AtomicInteger();
        model.ask(told::incrementAndGet);
        assertThat(told).hasValue(1);
        return model.shown();
    }

    private static List<String> codes(ForecastModel.Shown shown) {
        return shown.problems().stream().map(Problem::code).toList();
    }

    @Test
    void nothingIsReadBeforeItIsAskedFor() {
        mixDesk.select("M-1");
        mix.followDesk();
        assertThat(model.shown().headline()).startsWith("Before anything is saved");
        assertThat(model.shown().isForecast()).isFalse();
    }

    @Test
    void withoutTrialsItSaysWhyThereIsNone() {
        mixDesk.select("M-1");
        mix.followDesk();
        assertThat(codes(asked())).containsExactly("forecast.no-trials");
    }

    @Test
    void theForecastFollowsTheDraftWithoutAskingAgain() {
        keepTrials();
        mixDesk.select("M-1");
        mix.followDesk();
        ForecastModel.Shown first = asked();
        assertThat(first.headline()).startsWith("Forecast, not a factor: 1.").contains("of 3 trials");
        assertThat(first.lines()).hasSize(2);
        ForecastModel.Line sand = first.lines().get(0);
        assertThat(sand.source()).isEqualTo("S-1");
        // 700 kg a cubic metre are 4900 g in 7 L.
        assertThat(sand.mass()).isEqualTo("4900");
        assertThat(first.problems()).isEmpty();
        assertThat(first.against()).isEmpty();
        mix.constituents().type(0, MixColumns.MASS, "900");
        ForecastModel.Shown more = model.shown();
        assertThat(more.headline()).isNotEqualTo(first.headline());
        assertThat(more.lines().get(0).mass()).isEqualTo("6300");
        assertThat(codes(more)).contains("forecast.more-than-tested");
        assertThat(more.against()).startsWith("For the saved design the forecast is 1.");
        assertThat(model.massHeading()).isEqualTo("g in 7 L");
        mixDesk.desk.show(UnitSystem.US);
        assertThat(model.massHeading()).isEqualTo("lb in 0.247 ft3");
        mix.constituents().type(0, MixColumns.MASS, "");
        assertThat(model.shown().headline()).startsWith("The draft cannot be forecast");
    }

    @Test
    void everyDeterminationStandsBesideWhatTheOtherMixesSayOfIt() {
        keepTrials();
        mixDesk.select("M-1");
        mix.followDesk();
        assertThat(model.check()).isEmpty();
        asked();
        ForecastCheck check = model.check().orElseThrow();
        assertThat(check.points()).hasSize(SAND.length);
        assertThat(check.untold()).isZero();
        assertThat(check.isSimulated()).isFalse();
        ForecastCheck.Point first = check.points().get(0);
        assertThat(first.mix()).isEqualTo("T-0");
        assertThat(first.measuredPercent()).isCloseTo(1.4, within(1e-9));
        mixDesk.keepElsewhere(Draft.of(Samples.source("S-9", Role.COARSE, "1")));
        mixDesk.desk.refresh();
        assertThat(model.check()).isEmpty();
    }

    @Test
    void aSourceSwappedForOneNeverTestedIsRefused() {
        keepTrials();
        Books.keep(mixDesk.book, List.of(Samples.source("S-9", Role.COARSE, "1")));
        mixDesk.desk.refresh();
        mixDesk.select("M-1");
        mix.followDesk();
        asked();
        mix.constituents().type(1, MixColumns.SOURCE, "S-9");
        assertThat(codes(model.shown())).containsExactly("forecast.source-never-tested");
        assertThat(model.shown().headline()).isEqualTo("There is no forecast:");
        assertThat(model.shown().isForecast()).isFalse();
        assertThat(model.shown().lines()).extracting(ForecastModel.Line::part).containsOnly("\u2013");
    }

    @Test
    void onceTheLabBookHasChangedItIsAskedForAgain() {
        keepTrials();
        mixDesk.select("M-1");
        mix.followDesk();
        asked();
        mixDesk.keepElsewhere(Draft.of(Samples.source("S-9", Role.COARSE, "1")));
        mixDesk.desk.refresh();
        assertThat(model.shown().headline()).startsWith("The lab book has changed");
        assertThat(asked().headline()).startsWith("Forecast, not a factor");
    }

    @Test
    void itSaysWhatKeepingTheDraftWouldDoToTheFactorInForce() {
        keepTrials();
        Books.keep(mixDesk.book, List.of(Samples.issue("T-2", 1, "T-2/1", LocalDate.of(2026, 3, 1))));
        mixDesk.desk.refresh();
        mixDesk.select("T-2");
        mix.followDesk();
        DraftEffects effects = new DraftEffects(mix);
        assertThat(effects.shown()).isEqualTo(DraftEffects.Shown.NOTHING);
        mix.constituents().type(0, MixColumns.MASS, "720");
        assertThat(effects.shown().words())
                .isEqualTo("If you save this, the factor 0.40 % (revision 1) no longer holds for the mix, and a new "
                        + "test is needed. No card of it left the laboratory.");
        // 700 of 1750 kg is 40 %, 720 of 1770 kg is 40.7 %.
        assertThat(effects.shown().why())
                .extracting(Problem::values)
                .containsExactly(
                        List.of("S-1", new BigDecimal("40.0"), new BigDecimal("40.7")),
                        List.of("S-2", new BigDecimal("60.0"), new BigDecimal("59.3")));
    }

    /** A card of revision 1 is out on paper and one is a file. */
    @Test
    void itNamesTheCardsThatAreOutAndTheSourceThatComesIn() {
        keepTrials();
        Books.keep(mixDesk.book, List.of(Samples.issue("T-2", 1, "T-2/1", LocalDate.of(2026, 3, 1))));
        Books.keep(
                mixDesk.book,
                List.of(
                        new CardPrint(new MixId("T-2"), 1, 1, "A6", "printer"),
                        new CardPrint(new MixId("T-2"), 1, 2, "A6", "/cards/T-2.pdf")));
        mixDesk.desk.refresh();
        mixDesk.select("T-2");
        mix.followDesk();
        mix.constituents().type(0, MixColumns.SOURCE, "S-3");
        DraftEffects.Shown shown = new DraftEffects(mix).shown();
        assertThat(shown.words())
                .endsWith("Of its cards, 1 are out and 1 were saved as files. They are with: nobody named "
                        + "(T-2/r1/1).");
        assertThat(shown.why()).extracting(Problem::code).containsExactly("draft.source-out", "draft.source-in");
        assertThat(mixDesk.book.latest(MixDesign.class, "T-2").orElseThrow().number())
                .isEqualTo(1);
    }

    @Test
    void aChangeThatTouchesNoAggregateLetsTheFactorStand() {
        keepTrials();
        Books.keep(mixDesk.book, List.of(Samples.issue("T-2", 1, "T-2/1", LocalDate.of(2026, 3, 1))));
        mixDesk.desk.refresh();
        mixDesk.select("T-2");
        mix.followDesk();
        mix.type(MixColumns.REMARKS, "for the bridge");
        DraftEffects.Shown shown = new DraftEffects(mix).shown();
        assertThat(shown.words())
                .isEqualTo("If you save this, the factor 0.40 % (revision 1) still holds for the mix: no rule asks "
                        + "for a new test.");
        assertThat(shown.why()).isEmpty();
    }

    /** 720 kg in the batch of 1 m3 are 720 x 7.05/1000 kg in the bowl, before anything is asked or kept. */
    @Test
    void whatWouldBeWeighedIsSeenAtOnce() {
        keepTrials();
        mixDesk.select("T-2");
        mix.followDesk();
        mix.constituents().type(0, MixColumns.MASS, "720");
        assertThat(model.shown().isForecast()).isFalse();
        assertThat(model.shown().lines()).extracting(ForecastModel.Line::source).containsExactly("S-1", "S-2");
        String first = model.shown().lines().get(0).mass();
        mix.constituents().type(0, MixColumns.MASS, "820");
        assertThat(model.shown().lines().get(0).mass()).isNotEqualTo(first);
        assertThat(model.shown().lines().get(0).poreAir()).isEqualTo("\u2013");
    }
}
