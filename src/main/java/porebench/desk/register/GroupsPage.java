package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import porebench.desk.DeskModel;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;
import porebench.record.FactorGroup;
import porebench.record.column.GroupColumns;
import porebench.record.id.MixId;

/** The register of groups of mixes that take one factor. */
public final class GroupsPage extends RecordPage<FactorGroup> {
    /**
     * Makes the register.
     *
     * @param openMix turns the window to a mix of a group
     */
    public GroupsPage(DeskModel desk, Consumer<MixId> openMix) {
        this(new GroupsModel(desk, texts(desk)), openMix);
    }

    private GroupsPage(GroupsModel model, Consumer<MixId> openMix) {
        super(model, columns(model, model.texts()), Optional.empty(), openMix, new GroupSections(model, openMix));
    }

    private static List<ShownColumn<FactorGroup>> columns(GroupsModel model, Texts texts) {
        return List.of(
                shown(model, GroupColumns.ID, 70).sortedBy(FactorGroup::recordId),
                shown(model, GroupColumns.TITLE, 150).sortedBy(FactorGroup::title),
                shown(model, GroupColumns.TESTED_MIX, texts.get("group.testedMix.short"), 80)
                        .sortedBy(FactorGroup::testedMix),
                new ShownColumn<FactorGroup>(
                                texts.get("group.count"),
                                60,
                                group -> Integer.toString(group.members().size()))
                        .number()
                        .sortedBy(group -> group.members().size()),
                shown(model, GroupColumns.TOLERANCE, texts.get("group.tolerance.short"), 66));
    }
}
