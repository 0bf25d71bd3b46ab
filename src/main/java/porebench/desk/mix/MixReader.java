package porebench.desk.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import porebench.desk.form.DraftReader;
import porebench.desk.form.Numbers;
import porebench.desk.form.TypedDraft;
import porebench.method.Problem;
import porebench.method.sample.Batch;
import porebench.method.sample.CorrectionSample;
import porebench.record.MixDesign;
import porebench.record.column.MixColumns;

/**
 * Reads a draft: typed text becomes numbers, and what is no number becomes a problem.
 *
 * <p>Where a text cannot be read, a harmless value takes its place while the rest is checked, so that one slip does not
 * hide the other problems; what then depends on that value is left unsaid.
 */
final class MixReader {
    private static final Set<String> ABOUT_THE_WHOLE = Set.of("batchVolume", "bowl", "wetSieved");
    private static final String UNKNOWN = "?";

    private final TypedDraft draft;
    private final Numbers numbers;
    private final MixModel words;

    private MixReader(TypedDraft draft, Numbers numbers, MixModel words) {
        this.draft = draft;
        this.numbers = numbers;
        this.words = words;
    }

    /** Reads a draft. */
    static MixReading read(TypedDraft draft, Numbers numbers, MixModel words) {
        return new MixReader(asked(draft), numbers, words).read();
    }

    /** Returns a draft without the volume that is not asked for. */
    private static TypedDraft asked(TypedDraft draft) {
        VolumeFrom from = draft.chosen(MixFields.VOLUME_FROM);
        TypedDraft asked = from == VolumeFrom.STATED ? draft : draft.with(MixColumns.VOLUME, "");
        return from == VolumeFrom.DENSITY ? asked : asked.with(MixColumns.MEASURED_DENSITY, "");
    }

    private DraftReader reader(TypedDraft typed) {
        return new DraftReader(typed, numbers, words::words, words.constituents()::cellWords);
    }

    private MixReading read() {
        VolumeFrom from = draft.chosen(MixFields.VOLUME_FROM);
        DraftReader reader = reader(draft);
        Optional<MixDesign> mix = MixColumns.ALL.read(reader);
        reader.require(MixColumns.TITLE);
        if (from == VolumeFrom.STATED) {
            reader.require(MixColumns.VOLUME);
        } else if (from == VolumeFrom.DENSITY) {
            reader.require(MixColumns.MEASURED_DENSITY);
        }
        List<Problem> problems = new ArrayList<>(reader.problems());
        Set<String> wrong = problems.stream().map(Problem::field).collect(Collectors.toSet());
        Batch batch = MixColumns.ALL.read(reader(mended(wrong))).orElseThrow().batch();
        List<Problem> unread = problems.stream().filter(MixReader::isOfTheBatch).toList();
        Set<String> unreadFields = unread.stream().map(Problem::field).collect(Collectors.toSet());
        CorrectionSample.of(batch, BatchFigures.NOMINAL_BOWL).problems().stream()
                .filter(problem -> !unreadFields.contains(problem.field()))
                .filter(problem -> unread.isEmpty() || !ABOUT_THE_WHOLE.contains(problem.field()))
                .forEach(problems::add);
        boolean volumeKnown = !wrong.contains(MixColumns.TARGET_AIR.field())
                && !wrong.contains(MixColumns.VOLUME.field())
                && !wrong.contains(MixColumns.MEASURED_DENSITY.field());
        return new MixReading(
                Problem.anyError(problems) ? Optional.empty() : mix, figures(batch, volumeKnown, unread), problems);
    }

    /** Returns whether a problem of reading leaves the batch unknown; a missing name does not. */
    private static boolean isOfTheBatch(Problem problem) {
        String field = problem.field();
        return field.startsWith(MixColumns.CONSTITUENTS.field()) && !field.endsWith("." + MixColumns.NAME.field())
                || field.equals(MixColumns.TARGET_AIR.field())
                || field.equals(MixColumns.VOLUME.field())
                || field.equals(MixColumns.MEASURED_DENSITY.field());
    }

    /** Returns the draft with a harmless value in the place of all that is wrong. */
    private TypedDraft mended(Set<String> wrong) {
        TypedDraft harmless = TypedDraft.BLANK.with(MixColumns.ID, UNKNOWN).with(MixColumns.TARGET_AIR, "0");
        boolean hasVolume =
                !wrong.contains(MixColumns.VOLUME.field()) && !wrong.contains(MixColumns.MEASURED_DENSITY.field());
        List<TypedDraft> rows = draft.rows(MixColumns.CONSTITUENTS);
        return draft.without(wrong)
                .orFrom(hasVolume ? harmless : harmless.with(MixColumns.VOLUME, "1"))
                .with(
                        MixColumns.CONSTITUENTS,
                        IntStream.range(0, rows.size())
                                .mapToObj(row -> mended(row, rows.get(row), wrong))
                                .toList());
    }

    private TypedDraft mended(int row, TypedDraft typed, Set<String> wrong) {
        String under = words.constituents().problemsUnder() + row + ".";
        return typed.without(wrong.stream()
                        .filter(field -> field.startsWith(under))
                        .map(field -> field.substring(under.length()))
                        .toList())
                .orFrom(TypedDraft.BLANK
                        .with(MixColumns.NAME, words.constituents().rowName(row, typed))
                        .with(MixColumns.MASS, "1"));
    }

    /** Returns the figures of the rows that have a mass, unless a text that is no number makes them untrue. */
    private Optional<BatchFigures> figures(Batch batch, boolean volumeKnown, List<Problem> unread) {
        if (unread.stream().anyMatch(problem -> problem.kind() == Problem.Kind.NOT_A_NUMBER)) {
            return Optional.empty();
        }
        Batch known = new Batch(
                MixFields.weighed(draft).stream().map(batch.constituents()::get).toList(),
                batch.volume(),
                batch.targetAirPercent(),
                batch.wetSieved());
        return known.constituents().isEmpty() ? Optional.empty() : Optional.of(BatchFigures.of(known, volumeKnown));
    }
}
