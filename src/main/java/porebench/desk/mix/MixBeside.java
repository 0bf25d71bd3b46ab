package porebench.desk.mix;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.desk.form.TwoVersions.Line;
import porebench.evidence.RegisterRow;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;
import porebench.record.book.Version;
import porebench.record.group.Likeness;
import porebench.record.id.MixId;

/**
 * Two mix designs side by side: where they differ, and what that means for the correction sample and for the factor.
 *
 * <p>What it says of the factor is what {@link MixDesign#hasSameAggregatesAs} and {@link Likeness} say, by which factors are judged
 * and groups are kept; nothing is decided here.
 */
final class MixBeside {
    private static final Volume BOWL = Volume.of(7, VolumeUnit.LITRE);
    private static final int DECIMALS = 3;

    private final MixModel model;
    private final Version<MixDesign> one;
    private final Version<MixDesign> other;

    private MixBeside(MixModel model, Version<MixDesign> one, Version<MixDesign> other) {
        this.model = model;
        this.one = one;
        this.other = other;
    }

    /** Asks for a mix design, to be put beside the one on view. */
    record Of(MixId other) implements Question<Optional<Version<MixDesign>>> {
        @Override
        public Optional<Version<MixDesign>> answer(Reading seen) {
            return seen.book().latest(MixDesign.class, other.text());
        }
    }

    /** Puts two mix designs of the lab book side by side; what is typed and not saved is not among it. */
    static MixBeside of(MixModel model, Version<MixDesign> one, Version<MixDesign> other) {
        return new MixBeside(model, one, other);
    }

    String oneName() {
        return one.value().id().text();
    }

    String otherName() {
        return other.value().id().text();
    }

    /** Returns the lines in which they differ, then what to weigh out for each and what factor each has. */
    List<Line> lines() {
        List<Line> lines =
                new ArrayList<>(model.sideBySide(one.value(), other.value()).lines());
        add(lines, "beside.fine", mass(one, CorrectionSample::fine), mass(other, CorrectionSample::fine));
        add(lines, "beside.coarse", mass(one, CorrectionSample::coarse), mass(other, CorrectionSample::coarse));
        add(lines, "beside.factor", factor(one), factor(other));
        return lines;
    }

    private void add(List<Line> lines, String key, String left, String right) {
        lines.add(new Line(model.texts().get(key), left, left, right, false));
    }

    private String mass(Version<MixDesign> mix, Function<CorrectionSample, Mass> part) {
        return CorrectionSample.of(mix.value().batch(), BOWL)
                .value()
                .map(part)
                .map(this::shown)
                .orElse(text("beside.unknown"));
    }

    private String shown(Mass mass) {
        MassUnit unit = model.desk().units().benchMass();
        int decimals = unit == MassUnit.GRAM ? 0 : DECIMALS;
        return model.desk().tools().numbers().show(mass.in(unit), decimals) + " " + unit.symbol();
    }

    private String factor(Version<MixDesign> mix) {
        Optional<BigDecimal> percent = model.desk().rows().stream()
                .filter(row -> row.mixId().equals(mix.value().id()))
                .filter(row -> row.state().isUsable())
                .findFirst()
                .flatMap(RegisterRow::factorPercent);
        return percent.map(value ->
                        text("beside.percent", model.desk().tools().numbers().show(value)))
                .orElse(text("beside.no-factor"));
    }

    /** Returns what the differences mean: for the correction sample, and for the factor. */
    List<String> meaning() {
        boolean isSame = one.value().hasSameAggregatesAs(other.value());
        List<String> said = new ArrayList<>();
        said.add(text(isSame ? "beside.sample.same" : "beside.sample.other"));
        Likeness like = Likeness.of(other.value(), one.value(), tolerance());
        if (like.isLike()) {
            said.add(text("beside.factor.like"));
        } else {
            said.add(text("beside.factor.other"));
            like.why().stream().map(Problem::asWarning).map(this::say).forEach(said::add);
        }
        return said;
    }

    private BigDecimal tolerance() {
        return model.profile(one.value().profileId())
                .map(profile -> number(profile))
                .orElse(BigDecimal.ZERO);
    }

    private static BigDecimal number(Profile profile) {
        return BigDecimal.valueOf(profile.number(FigureName.PROPORTION_TOLERANCE));
    }

    private String say(Problem problem) {
        return model.desk().tools().problemText().say(problem);
    }

    private String text(String key, String... values) {
        return model.texts().get(key, values);
    }
}
