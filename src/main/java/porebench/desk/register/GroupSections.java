package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.desk.StateMark;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.Numbers;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.WrappedText;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.evidence.group.GroupLook;
import porebench.evidence.group.LikeMix;
import porebench.method.Texts;
import porebench.record.FactorIssue;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;

/** The members of the group on view, each with its factor and how far it is, and the mixes that might come in. */
final class GroupSections implements RecordSections {
    private static final int MARK_SIDE = 12;
    private static final int MOST_MIXES = 9;

    private final JPanel panel = new JPanel(
            new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]", "[]4[]6[]6[]14[]4[]6[]"));
    private final GroupsModel model;
    private final Texts texts;
    private final Numbers numbers;
    private final JLabel membersTitle;
    private final RowTable<GroupLook.Member> members;
    private final JScrollPane membersScroll;
    private final RowTable<LikeMix> candidates;
    private final WrappedText none = new WrappedText("group.none", "quiet");
    private final ProblemLines matters;
    private final Action open;
    private final JButton openButton;
    private final Action add;
    private Optional<String> of = Optional.empty();

    GroupSections(GroupsModel model, Consumer<MixId> openMix) {
        this.model = model;
        this.texts = model.texts();
        this.numbers = model.desk().tools().numbers();
        members = new RowTable<>("group.members", texts.get("group.members.title"), memberColumns());
        members.setMostRows(MOST_MIXES);
        membersScroll = members.scrolled();
        matters = new ProblemLines("group.matters", model.desk().tools().problemText());
        candidates = new RowTable<>("group.candidates", texts.get("group.like"), candidateColumns());
        candidates.setMostRows(MOST_MIXES);
        open = Commands.of(
                texts.get("group.open"),
                () -> members.selected().map(GroupLook.Member::mixId).ifPresent(openMix));
        add = Commands.of(
                texts.get("group.add"),
                () -> candidates.selected().map(LikeMix::mixId).ifPresent(model::add));
        members.on("ENTER", open);
        members.onSelect(chosen -> open.setEnabled(chosen.isPresent()));
        candidates.on("ENTER", add);
        candidates.onSelect(chosen -> add.setEnabled(chosen.isPresent()));
        membersTitle = Form.heading(texts.get("group.members.title"), "h2");
        panel.setOpaque(false);
        panel.setName("group.sections");
        panel.add(membersTitle);
        panel.add(membersScroll, "wmin 0");
        openButton = Commands.button("group.open", open);
        panel.add(matters.panel(), "wmin 0");
        panel.add(openButton, "growx 0");
        panel.add(Form.heading(texts.get("group.like"), "h2"));
        panel.add(none, "wmin 0");
        panel.add(candidates.scrolled(), "wmin 0");
        panel.add(Commands.button("group.add", add), "growx 0");
    }

    private List<ShownColumn<GroupLook.Member>> memberColumns() {
        return List.of(
                new ShownColumn<GroupLook.Member>(texts.get("register.mix"), 122, this::name)
                        .sortedBy(GroupLook.Member::mixId),
                new ShownColumn<GroupLook.Member>(
                                texts.get("register.factor"),
                                52,
                                member -> member.inForce()
                                        .map(FactorIssue::factorPercent)
                                        .map(numbers::show)
                                        .orElse(""))
                        .number(),
                new ShownColumn<GroupLook.Member>(
                                texts.get("register.state"),
                                132,
                                member -> texts.get(
                                        "state." + member.state().symbol().replace(' ', '-')))
                        .mark((member, selected) -> new StateMark(member.state(), MARK_SIDE))
                        .sortedBy(GroupLook.Member::state),
                new ShownColumn<GroupLook.Member>(
                                texts.get("group.points"),
                                60,
                                member -> model.far(member.likeness().apartPoints()))
                        .number()
                        .sortedBy(member -> member.likeness().apartPoints())
                        .tip(texts.get("group.points.tip")),
                new ShownColumn<GroupLook.Member>(
                                texts.get("group.percent"),
                                60,
                                member -> model.far(member.likeness().apartPercent()))
                        .number()
                        .sortedBy(member -> member.likeness().apartPercent())
                        .tip(texts.get("group.percent.tip")),
                new ShownColumn<GroupLook.Member>(texts.get("register.mixTitle"), 150, GroupLook.Member::title)
                        .sortedBy(GroupLook.Member::title));
    }

    private String name(GroupLook.Member member) {
        return member.isTested()
                ? texts.get("group.tested", member.mixId().text())
                : member.mixId().text();
    }

    private List<ShownColumn<LikeMix>> candidateColumns() {
        return List.of(
                new ShownColumn<LikeMix>(
                                texts.get("register.mix"),
                                76,
                                mix -> mix.mixId().text())
                        .sortedBy(LikeMix::mixId),
                new ShownColumn<LikeMix>(
                                texts.get("group.points"),
                                60,
                                mix -> model.far(mix.likeness().apartPoints()))
                        .number()
                        .sortedBy(mix -> mix.likeness().apartPoints())
                        .tip(texts.get("group.points.tip")),
                new ShownColumn<LikeMix>(
                                texts.get("group.percent"),
                                60,
                                mix -> model.far(mix.likeness().apartPercent()))
                        .number()
                        .sortedBy(mix -> mix.likeness().apartPercent())
                        .tip(texts.get("group.percent.tip")),
                new ShownColumn<LikeMix>(
                        texts.get("group.in"),
                        70,
                        mix -> mix.group().map(GroupId::text).orElse("")),
                new ShownColumn<LikeMix>(texts.get("register.mixTitle"), 150, LikeMix::title).sortedBy(LikeMix::title));
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void refresh() {
        boolean isThere = !model.isNew();
        membersTitle.setVisible(isThere);
        membersScroll.setVisible(isThere);
        openButton.setVisible(isThere);
        Optional<String> group = model.base().map(version -> version.value().recordId());
        Optional<GroupLook> found = model.look();
        // While it is looked up anew what was found of the same group stays, so that nothing flickers.
        if (found.isPresent() || !group.equals(of)) {
            of = group;
            show(members, found.map(GroupLook::members).orElse(List.of()));
            matters.show(found.map(GroupsModel::matters).orElse(List.of()));
        }
        Optional<List<LikeMix>> like = model.candidates();
        like.ifPresent(all -> show(candidates, all));
        none.say(texts.get(like.filter(List::isEmpty).isPresent() ? "group.none-like" : "group.like.sentence"));
        open.setEnabled(members.selected().isPresent());
        add.setEnabled(candidates.selected().isPresent());
    }

    /** Shows other rows, none of them chosen; the same rows keep what is chosen. */
    private static <R> void show(RowTable<R> table, List<R> rows) {
        if (!rows.equals(table.shown())) {
            table.clearSelection();
            table.show(rows);
        }
    }
}
