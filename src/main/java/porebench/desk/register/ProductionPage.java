package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import porebench.desk.DeskModel;
import porebench.desk.form.Days;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;
import porebench.record.Production;
import porebench.record.column.ProductionColumns;
import porebench.record.id.MixId;

/** What was made of a mix, spell by spell. */
public final class ProductionPage extends RecordPage<Production> {
    /**
     * Makes the page.
     *
     * @param openMix turns the window to the mix of the spells
     */
    public ProductionPage(DeskModel desk, Consumer<MixId> openMix) {
        this(new ProductionModel(desk, texts(desk)), openMix);
    }

    private ProductionPage(ProductionModel model, Consumer<MixId> openMix) {
        super(model, columns(model, model.texts()), Optional.empty(), openMix, RecordSections.NONE);
    }

    private static List<ShownColumn<Production>> columns(ProductionModel model, Texts texts) {
        return List.of(
                new ShownColumn<Production>(
                                texts.get("production.firstDay.plain"), 90, spell -> Days.show(spell.firstDay()))
                        .sortedBy(Production::firstDay),
                new ShownColumn<Production>(
                                texts.get("production.lastDay.plain"), 90, spell -> Days.show(spell.lastDay()))
                        .sortedBy(Production::lastDay),
                shown(model, ProductionColumns.PRODUCTION_DAYS, texts.get("production.days.short"), 60),
                shown(model, ProductionColumns.LOADS, 60),
                new ShownColumn<>(texts.get("production.concrete"), 100, model::concreteWords),
                shown(model, ProductionColumns.REPORTED_BY, 130));
    }
}
