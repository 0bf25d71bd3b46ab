package porebench.desk.register;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.desk.form.Days;
import porebench.desk.form.TypedDraft;
import porebench.evidence.RegisterRow;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.quantity.BulkMassUnit;
import porebench.record.MixDesign;
import porebench.record.Production;
import porebench.record.book.Belonging;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.column.ProductionColumns;
import porebench.record.id.MixId;
import porebench.record.production.Spells;

/** What was made of one mix: that of the form, which begins with the mix on view. */
final class ProductionModel extends RecordModel<Production> {
    private static final List<Column<Production, ?>> IN_FORM = List.of(
            ProductionColumns.MIX,
            ProductionColumns.FIRST_DAY,
            ProductionColumns.LAST_DAY,
            ProductionColumns.PRODUCTION_DAYS,
            ProductionColumns.LOADS,
            ProductionColumns.VOLUME,
            ProductionColumns.MASS,
            ProductionColumns.REPORTED_BY,
            ProductionColumns.REMARKS);
    private static final Set<Column<Production, ?>> DAYS =
            Set.of(ProductionColumns.FIRST_DAY, ProductionColumns.LAST_DAY);

    private Optional<MixId> onView;

    ProductionModel(DeskModel desk, Texts texts) {
        super(desk, texts, Production.class, ProductionColumns.ALL, "production", () -> blank(desk));
        onView = desk.selected();
        follow();
        desk.onChange(this::followMix);
    }

    private static TypedDraft blank(DeskModel desk) {
        return TypedDraft.BLANK
                .with(ProductionColumns.MIX, desk.selected().map(MixId::text).orElse(""))
                .with(ProductionColumns.LAST_DAY, Days.show(desk.tools().today()))
                .withUnit(ProductionColumns.VOLUME, desk.units().batchVolume().symbol())
                .withUnit(ProductionColumns.MASS, BulkMassUnit.TONNE.symbol());
    }

    /** Another mix on view is the one whose production is listed, unless something is typed. */
    private void followMix() {
        if (!onView.equals(desk().selected()) && !history().isChanged()) {
            onView = desk().selected();
            showNone();
        }
    }

    @Override
    List<Column<Production, ?>> inForm() {
        return IN_FORM;
    }

    /** Asks for the spells of a mix, the last one first; none of a mix that nobody named. */
    private record Of(String mix) implements Question<List<Version<Production>>> {
        @Override
        public List<Version<Production>> answer(Reading seen) {
            return mix.isEmpty()
                    ? List.of()
                    : seen.book().latestOf(Belonging.PRODUCTION_OF_MIX, mix).stream()
                            .sorted(Comparator.comparing((Version<Production> version) ->
                                            version.value().firstDay())
                                    .reversed())
                            .toList();
        }
    }

    @Override
    Question<List<Version<Production>>> listed() {
        return new Of(typedMix());
    }

    private String typedMix() {
        return draft().text(ProductionColumns.MIX).strip();
    }

    /** A spell is called after its mix and its last day, which no other spell of the mix has. */
    @Override
    TypedDraft named(TypedDraft draft) {
        String last = draft.text(ProductionColumns.LAST_DAY).strip();
        boolean isToBeNamed = draft.text(ProductionColumns.ID).isBlank() && !last.isEmpty();
        String mix = draft.text(ProductionColumns.MIX).strip();
        return isToBeNamed && !mix.isEmpty() ? draft.with(ProductionColumns.ID, mix + "/" + last) : draft;
    }

    @Override
    List<Problem> lookAt(Production spell) {
        List<Problem> problems = new ArrayList<>(spell.check(desk().tools().today()));
        spell.checkBeside(rows().stream().map(Version::value).toList()).ifPresent(problems::add);
        desk().answer(new Question.One<>(MixDesign.class, spell.mixId().text()))
                .filter(Optional::isEmpty)
                .ifPresent(nobody -> problems.add(Spells.unknownMix(spell)));
        return problems;
    }

    @Override
    public String beside(Column<?, ?> column, TypedDraft draft) {
        return DAYS.contains(column) ? texts().get("equipment.date-pattern") : super.beside(column, draft);
    }

    /** Says what the rules of the laboratory ask of the mix, as it stands in the register. */
    @Override
    String note() {
        String due = desk().rows().stream()
                .filter(row -> row.mixId().text().equals(typedMix()))
                .map(this::due)
                .collect(Collectors.joining());
        return due.isEmpty() ? texts().get("production.note") : texts().get("production.due", typedMix(), due);
    }

    private String due(RegisterRow row) {
        return row.due().stream().map(desk().tools().problemText()::say).collect(Collectors.joining(" "));
    }

    /** Returns the concrete of a spell as it is stated, a volume or a mass; blank where neither is. */
    String concreteWords(Production spell) {
        TypedDraft draft = draftOf(spell);
        String volume = said(ProductionColumns.VOLUME, draft);
        return volume.isEmpty() ? said(ProductionColumns.MASS, draft) : volume;
    }
}
