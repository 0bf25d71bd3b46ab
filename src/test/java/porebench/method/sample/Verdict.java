package porebench.method.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import porebench.method.Problem;
import porebench.method.Said;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** What is said of a batch, and a sound mix to spoil: 315 kg cement, 170 water, 750 sand, 1064 stone make 0.95 m3. */
final class Verdict {
    private Verdict() {}

    static final Volume BOWL = Volume.of(7, VolumeUnit.LITRE);

    static final MixLine CEMENT = MixLine.cement("315 kg").dense("3.15");
    static final MixLine WATER = MixLine.water("170 kg");
    static final MixLine SAND = MixLine.fine("750 kg").dense("2.5").absorbing("1");
    static final MixLine STONE = MixLine.coarse("1064 kg").dense("2.8").absorbing("1");

    static Batch stated(MixLine... lines) {
        return MixLine.stated("1 m3", "5", lines);
    }

    static Batch computed(MixLine... lines) {
        return MixLine.fromConstituents("5", lines);
    }

    static List<Problem> problems(Batch batch) {
        return CorrectionSample.of(batch, BOWL).problems();
    }

    static void refuses(Batch batch, String field, String code, String words) {
        Problem problem = Said.one(problems(batch), code);
        assertThat(problem.isError()).isTrue();
        assertThat(problem.field()).isEqualTo(field);
        assertThat(Said.text(problem)).contains(words);
        assertThat(CorrectionSample.of(batch, BOWL).value()).isEmpty();
    }

    static void doubts(Batch batch, String field, String code, String words) {
        Problem problem = Said.one(problems(batch), code);
        assertThat(problem.isError()).isFalse();
        assertThat(problem.field()).isEqualTo(field);
        assertThat(Said.text(problem)).contains(words);
        assertThat(CorrectionSample.of(batch, BOWL).value()).isPresent();
    }

    static void accepts(Batch batch) {
        assertThat(Said.codes(problems(batch))).isEmpty();
        assertThat(CorrectionSample.of(batch, BOWL).value()).isPresent();
    }
}
