package porebench.record.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Role;
import porebench.method.sample.Batch;
import porebench.method.sample.BatchVolume;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;
import porebench.record.SampleGroups;
import porebench.record.Samples;

/**
 * Worked with a pencil. M-1 holds 700 kg of sand S-1 and 1050 kg of stone S-2 in a cubic metre: 1750 kg, 40 % and 60 %.
 */
class LikenessHandTest {
    private static final MixDesign TESTED = SampleGroups.mix("M-1", "700", "1050");

    private static Likeness likeness(MixDesign mix) {
        return Likeness.of(mix, TESTED, new BigDecimal("3"));
    }

    /** 0.43 x 1750 = 752.5, 0.37 x 1750 = 647.5; 1.03 x 1750 = 1802.5, 0.97 x 1750 = 1697.5. */
    @ParameterizedTest
    @CsvSource({
        "752.5, 997.5, 3, 0, ''",
        "752.6, 997.4, 3.005714, 0, group.share-off",
        "647.5, 1102.5, 3, 0, ''",
        "647.4, 1102.6, 3.005714, 0, group.share-off",
        "721, 1081.5, 0, 3, ''",
        "721.04, 1081.56, 0, 3.005714, group.amount-more",
        "679, 1018.5, 0, -3, ''",
        "678.96, 1018.44, 0, -3.005714, group.amount-less",
        "700, 1050, 0, 0, ''"
    })
    void theToleranceItselfIsWithinAndAnyMoreIsNot(
            String sand, String stone, double points, double percent, String code) {
        Likeness found = likeness(SampleGroups.mix("M-2", sand, stone));
        assertThat(found.apartPoints()).isCloseTo(points, within(1e-6));
        assertThat(found.apartPercent()).isCloseTo(percent, within(1e-6));
        assertThat(found.apart()).isCloseTo(Math.max(points, Math.abs(percent)), within(1e-6));
        assertThat(found.why().stream().map(Problem::code).distinct().toList())
                .isEqualTo(code.isEmpty() ? List.of() : List.of(code));
        assertThat(found.isLike()).isEqualTo(code.isEmpty());
    }

    /** 752.6 of 1750 is 43.0057 %: with one decimal it would look as if it were within. */
    @Test
    void whatIsJustBeyondIsSaidWithTheDecimalsThatShowIt() {
        assertThat(likeness(SampleGroups.mix("M-2", "752.6", "997.4")).why().get(0))
                .isEqualTo(Problem.error(
                        "members",
                        "group.share-off",
                        "M-2",
                        "S-1",
                        new BigDecimal("43.006"),
                        "M-1",
                        new BigDecimal("40.000"),
                        new BigDecimal("3")));
        assertThat(ProblemText.in(Locale.ENGLISH)
                        .say(likeness(SampleGroups.mix("M-2", "787.5", "962.5"))
                                .why()
                                .get(0)))
                .isEqualTo("Source S-1 makes up 45.0 % of the aggregate of M-2 and 40.0 % of that of M-1; the "
                        + "tolerance is 3 points. Leave one of the two out of the group.");
    }

    /** 400 kg of each of two sands is 800 of 1750 kg as one source. */
    @Test
    void sizesOfOneSourceCountTogether() {
        MixDesign two = Samples.mix(
                "M-2",
                Samples.constituent("Sand", Role.FINE, "S-1", "700"),
                Samples.constituent("Stone", Role.COARSE, "S-2", "500"),
                Samples.constituent("Grit", Role.COARSE, "S-2", "550"));
        assertThat(likeness(two).apart()).isCloseTo(0, within(1e-9));
    }

    /** Half a cubic metre of the same concrete, and the same in SSD from an oven-dry mass: 691.7 x 1.012 = 700.0. */
    @Test
    void neitherTheBatchNorTheStateOfItsMassesCounts() {
        MixDesign half = SampleGroups.mix("M-2", "350", "525");
        MixDesign small = new MixDesign(
                half.id(),
                half.title(),
                new Batch(
                        half.batch().constituents(),
                        new BatchVolume.Stated(Typed.of("500", VolumeUnit.LITRE)),
                        half.batch().targetAirPercent(),
                        false),
                Optional.empty(),
                Optional.empty(),
                half.profileId(),
                "",
                Optional.empty());
        assertThat(likeness(small).apart()).isCloseTo(0, within(1e-9));
    }

    @Test
    void anotherSourceSievingOrProfileIsNeverLike() {
        assertThat(codes(Samples.mix("M-2", "S-1", "S-3"))).containsExactly("group.source-other");
        assertThat(codes(Samples.mix("M-2", Samples.constituent("Sand", Role.FINE, "S-1", "700"))))
                .containsExactly("group.source-missing");
        assertThat(codes(Samples.mix("M-2", "S-1", ""))).containsExactly("group.source-unnamed");
        MixDesign plain = SampleGroups.mix("M-2", "700", "1050");
        assertThat(codes(new MixDesign(
                        plain.id(),
                        "",
                        new Batch(
                                plain.batch().constituents(),
                                plain.batch().volume(),
                                plain.batch().targetAirPercent(),
                                true),
                        Optional.empty(),
                        Optional.empty(),
                        plain.profileId(),
                        "",
                        Optional.empty())))
                .containsExactly("group.other-sieving");
        assertThat(codes(new MixDesign(
                        plain.id(),
                        "",
                        plain.batch(),
                        Optional.empty(),
                        Optional.empty(),
                        "own",
                        "",
                        Optional.empty())))
                .containsExactly("group.other-profile");
        assertThat(likeness(Samples.mix("M-2", "S-1", "S-3")).apart()).isInfinite();
    }

    /** Without a volume, a density or the other constituents nothing says how much concrete the masses stand for. */
    @Test
    void aDesignThatGivesNoSharesIsNotLike() {
        MixDesign plain = SampleGroups.mix("M-2", "0", "0");
        assertThat(codes(plain)).containsExactly("group.no-shares");
    }

    private static List<String> codes(MixDesign mix) {
        return likeness(mix).why().stream().map(Problem::code).toList();
    }
}
