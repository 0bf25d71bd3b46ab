package porebench.desk.register;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.desk.DeskModel;
import porebench.desk.form.Days;
import porebench.desk.form.Numbers;
import porebench.desk.form.Texts;
import porebench.evidence.MeterStory;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.Limit;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.meter.MeterState;
import porebench.method.profile.Profiles;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.id.MeterId;

/** The register of meters. */
final class MetersModel extends RecordModel<Meter, MeterDraft> {
    private Map<MeterId, MeterStory> stories = Map.of();

    MetersModel(DeskModel desk, Texts texts) {
        super(desk, texts, Meter.class, blank(desk));
        follow();
        readStories();
        desk.onChange(this::readStories);
    }

    private void readStories() {
        stories = desk().meters().stream()
                .collect(Collectors.toMap(story -> story.meter().value().id(), story -> story));
    }

    /** Returns whether a meter may be trusted today. */
    MeterState state(Meter meter) {
        return Optional.ofNullable(stories.get(meter.id()))
                .map(story -> story.stateOn(desk().tools().today()))
                .orElse(MeterState.NEVER);
    }

    String stateWords(Meter meter) {
        return texts().get("meter.state." + state(meter).name());
    }

    /** Returns the last day on which a meter's calibration holds, blank while it has none. */
    String nextDueWords(Meter meter) {
        return Optional.ofNullable(stories.get(meter.id()))
                .flatMap(MeterStory::nextDue)
                .map(Days::show)
                .orElse("");
    }

    private static MeterDraft blank(DeskModel desk) {
        return new MeterDraft("", MeterType.B, "", "", desk.units().bowlVolume(), "", "", true, "");
    }

    @Override
    MeterDraft blank() {
        return blank(desk());
    }

    @Override
    MeterDraft draftOf(Meter meter) {
        Numbers numbers = desk().tools().numbers();
        return new MeterDraft(
                meter.id().text(),
                meter.type(),
                meter.serial(),
                numbers.show(meter.bowl().number()),
                unitOf(meter),
                numbers.show(meter.divisionPercent()),
                numbers.show(meter.scaleTopPercent()),
                meter.inService(),
                meter.remarks());
    }

    private static VolumeUnit unitOf(Meter meter) {
        return Typed.parseUnit(meter.bowl().unit().symbol(), List.of(VolumeUnit.values()))
                .orElseThrow();
    }

    @Override
    Answer<Meter> read(MeterDraft draft) {
        List<Problem> problems = new ArrayList<>();
        TypedNumber typed = new TypedNumber(desk().tools().numbers(), problems);
        typed.requireText("id", texts().get("meter.id.plain"), draft.id());
        VolumeUnit unit = draft.bowlUnit();
        Optional<BigDecimal> bowl = typed.required(
                "bowl",
                texts().get("meter.bowl.plain"),
                draft.bowl(),
                limit(Limit.BOWL.lowInclusive(), unit),
                limit(Limit.BOWL.highInclusive(), unit));
        Optional<BigDecimal> division =
                typed.required("division", texts().get("meter.division.plain"), draft.division(), Limit.DIVISION);
        Optional<BigDecimal> scaleTop =
                typed.required("scaleTop", texts().get("meter.scaleTop.plain"), draft.scaleTop(), Limit.SCALE_TOP);
        checkId(draft, problems);
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        Meter meter = new Meter(
                new MeterId(draft.id()),
                draft.type(),
                draft.serial().strip(),
                new Typed<>(bowl.orElseThrow(), unit),
                division.orElseThrow(),
                scaleTop.orElseThrow(),
                draft.inService(),
                draft.remarks().strip());
        meter.checkScale().ifPresent(problems::add);
        checkBowl(meter, problems);
        return Problem.anyError(problems) ? Answer.refused(problems) : Answer.of(meter, problems);
    }

    /** Returns a limit in a unit, to three digits, so that the message can name it. */
    private static String limit(BigDecimal litres, VolumeUnit unit) {
        double number = unit.in(VolumeUnit.LITRE.of(litres.doubleValue()));
        return new BigDecimal(number).round(new MathContext(3)).toPlainString();
    }

    private void checkId(MeterDraft draft, List<Problem> problems) {
        boolean taken = rows().stream()
                .anyMatch(row -> row.value().recordId().equals(draft.id().strip()));
        if (isNew() && taken) {
            problems.add(Problem.error(
                    "id",
                    "book.already-there",
                    texts().get("meter.word"),
                    draft.id().strip()));
        }
    }

    private static void checkBowl(Meter meter, List<Problem> problems) {
        double litres = VolumeUnit.LITRE.in(meter.bowl().value());
        double least = Profiles.standard().number(FigureName.LEAST_BOWL);
        if (litres < least) {
            problems.add(Problem.warning(
                    "bowl",
                    "trial.bowl-small",
                    litres,
                    least,
                    Profiles.standard().title()));
        }
    }

    @Override
    Map<String, String> said(Meter meter) {
        Numbers numbers = desk().tools().numbers();
        Map<String, String> said = new LinkedHashMap<>();
        said.put(texts().get("meter.type.plain"), typeWords(meter.type()));
        said.put(texts().get("meter.serial.plain"), meter.serial());
        said.put(
                texts().get("meter.bowl.plain"),
                numbers.show(meter.bowl().number()) + " " + meter.bowl().unit().symbol());
        said.put(texts().get("meter.division.plain"), numbers.show(meter.divisionPercent()));
        said.put(texts().get("meter.scaleTop.plain"), numbers.show(meter.scaleTopPercent()));
        said.put(texts().get("meter.inService.plain"), serviceWords(meter.inService()));
        said.put(texts().get("meter.remarks.plain"), meter.remarks());
        return said;
    }

    String typeWords(MeterType type) {
        return texts().get("meter.type." + type.name());
    }

    String serviceWords(boolean inService) {
        return texts().get(inService ? "meter.service.yes" : "meter.service.no");
    }

    /** Returns a bowl volume in the unit system that is shown. */
    String bowlWords(Meter meter) {
        VolumeUnit unit = desk().units().bowlVolume();
        boolean asTyped = meter.bowl().unit().equals(unit);
        Numbers numbers = desk().tools().numbers();
        String number = asTyped
                ? numbers.show(meter.bowl().number())
                : numbers.show(unit.in(meter.bowl().value()), 4);
        return number + " " + unit.symbol();
    }
}
