package porebench.desk.mix;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import porebench.desk.form.Numbers;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.sample.Batch;
import porebench.method.sample.BatchVolume;
import porebench.method.sample.Constituent;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;
import porebench.record.id.MixId;

/**
 * Reads a draft: typed text becomes numbers, and what is no number becomes a problem.
 *
 * <p>Where a text cannot be read, a harmless value takes its place while the rest is checked, so that one slip does not
 * hide the other problems; what then depends on that value is left unsaid.
 */
final class MixReader {
    private static final Set<String> ABOUT_THE_WHOLE = Set.of("batchVolume", "bowl", "wetSieved");

    private final MixDraft draft;
    private final Numbers numbers;
    private final Texts texts;
    private final List<Problem> problems = new ArrayList<>();

    private MixReader(MixDraft draft, Numbers numbers, Texts texts) {
        this.draft = draft;
        this.numbers = numbers;
        this.texts = texts;
    }

    /** Reads a draft. */
    static MixReading read(MixDraft draft, Numbers numbers, Texts texts) {
        return new MixReader(draft, numbers, texts).read();
    }

    private MixReading read() {
        requireText(MixField.ID);
        requireText(MixField.TITLE);
        int beforeBatch = problems.size();
        Optional<BigDecimal> targetAir = required(MixField.TARGET_AIR);
        Optional<BatchVolume> volume = volume();
        List<Constituent> constituents = IntStream.range(0, draft.rows().size())
                .mapToObj(row -> constituent(row, draft.rows().get(row)))
                .toList();
        Batch batch = new Batch(
                constituents,
                volume.orElseGet(() -> new BatchVolume.Stated(Typed.of("1", VolumeUnit.CUBIC_METRE))),
                targetAir.orElse(BigDecimal.ZERO),
                draft.wetSieved());
        List<Problem> unread = List.copyOf(problems.subList(beforeBatch, problems.size()));
        checkBatch(batch, unread);
        checkNames();
        Optional<BigDecimal> soak = within(MixField.SOAK_MINUTES, Limit.MIX_SOAK);
        Optional<BigDecimal> tolerance = within(MixField.AIR_TOLERANCE, Limit.AIR_TOLERANCE);
        Optional<BatchFigures> figures = figures(batch, targetAir.isPresent() && volume.isPresent(), unread);
        if (Problem.anyError(problems)) {
            return new MixReading(Optional.empty(), figures, problems);
        }
        MixDesign mix = new MixDesign(
                new MixId(draft.text(MixField.ID)),
                draft.text(MixField.TITLE).strip(),
                batch,
                soak,
                tolerance,
                draft.profileId(),
                draft.text(MixField.REMARKS).strip());
        return new MixReading(Optional.of(mix), figures, problems);
    }

    private Optional<BatchVolume> volume() {
        return switch (draft.volumeFrom()) {
            case CONSTITUENTS -> Optional.of(new BatchVolume.FromConstituents());
            case STATED ->
                required(MixField.BATCH_VOLUME)
                        .map(number -> new BatchVolume.Stated(new Typed<>(number, draft.volumeUnit())));
            case DENSITY ->
                required(MixField.DENSITY)
                        .map(number -> new BatchVolume.FromDensity(new Typed<>(number, draft.densityUnit())));
        };
    }

    private Constituent constituent(int row, MixRow typed) {
        BigDecimal mass = cell(row, typed, MixColumn.MASS).orElse(BigDecimal.ONE);
        if (!typed.hasMass()) {
            problems.add(Problem.error(MixColumn.MASS.fieldOf(row), "form.required", cellName(row, MixColumn.MASS)));
        }
        Optional<String> source =
                Optional.of(typed.text(MixColumn.SOURCE).strip()).filter(id -> !id.isEmpty());
        return new Constituent(
                rowName(row),
                typed.role(),
                source,
                new Typed<>(mass, typed.massUnit()),
                typed.state(),
                cell(row, typed, MixColumn.ABSORPTION),
                cell(row, typed, MixColumn.MOISTURE),
                cell(row, typed, MixColumn.RELATIVE_DENSITY),
                cell(row, typed, MixColumn.RETAINED).orElse(BigDecimal.ZERO));
    }

    private Optional<BigDecimal> cell(int row, MixRow typed, MixColumn column) {
        return number(column.fieldOf(row), cellName(row, column), typed.text(column));
    }

    private String rowName(int row) {
        String name = draft.rows().get(row).text(MixColumn.NAME).strip();
        return name.isEmpty() ? texts.get("row", Integer.toString(row + 1)) : name;
    }

    private String cellName(int row, MixColumn column) {
        return texts.get("cell", rowName(row), texts.get(column.nameKey()));
    }

    private void checkBatch(Batch batch, List<Problem> unread) {
        Set<String> unreadFields = unread.stream().map(Problem::field).collect(Collectors.toSet());
        CorrectionSample.of(batch, BatchFigures.NOMINAL_BOWL).problems().stream()
                .filter(problem -> !unreadFields.contains(problem.field()))
                .filter(problem -> unread.isEmpty() || !ABOUT_THE_WHOLE.contains(problem.field()))
                .forEach(problems::add);
    }

    private void checkNames() {
        for (int row = 0; row < draft.rows().size(); row++) {
            if (draft.rows().get(row).text(MixColumn.NAME).isBlank()) {
                problems.add(
                        Problem.error(MixColumn.NAME.fieldOf(row), "form.required", cellName(row, MixColumn.NAME)));
            }
        }
    }

    /** Returns the figures of the rows that have a mass, unless a text that is no number makes them untrue. */
    private Optional<BatchFigures> figures(Batch batch, boolean volumeKnown, List<Problem> unread) {
        if (unread.stream().anyMatch(problem -> problem.code().equals("form.not-a-number"))) {
            return Optional.empty();
        }
        List<Constituent> weighed = IntStream.range(0, draft.rows().size())
                .filter(row -> draft.rows().get(row).hasMass())
                .mapToObj(batch.constituents()::get)
                .toList();
        Batch known = new Batch(weighed, batch.volume(), batch.targetAirPercent(), batch.wetSieved());
        return weighed.isEmpty() ? Optional.empty() : Optional.of(BatchFigures.of(known, volumeKnown));
    }

    private void requireText(MixField field) {
        if (draft.text(field).isBlank()) {
            problems.add(Problem.error(field.field(), "form.required", texts.get(field.nameKey())));
        }
    }

    private Optional<BigDecimal> required(MixField field) {
        requireText(field);
        return number(field);
    }

    private Optional<BigDecimal> within(MixField field, Limit limit) {
        Optional<BigDecimal> number = number(field);
        if (number.isPresent() && !limit.holds(number.get())) {
            problems.add(Problem.error(
                    field.field(),
                    "form.out-of-range",
                    texts.get(field.nameKey()),
                    number.get(),
                    limit.lowInclusive(),
                    limit.highInclusive()));
        }
        return number;
    }

    private Optional<BigDecimal> number(MixField field) {
        return number(field.field(), texts.get(field.nameKey()), draft.text(field));
    }

    private Optional<BigDecimal> number(String field, String name, String typed) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        Optional<BigDecimal> number = numbers.parse(typed);
        if (number.isEmpty()) {
            problems.add(Problem.error(field, "form.not-a-number", name, typed.strip()));
        }
        return number;
    }
}
