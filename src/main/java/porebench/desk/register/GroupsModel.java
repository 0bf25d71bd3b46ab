package porebench.desk.register;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.desk.form.TypedDraft;
import porebench.evidence.group.GroupLook;
import porebench.evidence.group.LikeMix;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.FactorGroup;
import porebench.record.MixDesign;
import porebench.record.book.Version;
import porebench.record.column.CellType;
import porebench.record.column.Cells;
import porebench.record.column.Column;
import porebench.record.column.Columns;
import porebench.record.column.GroupColumns;
import porebench.record.group.GroupGate;
import porebench.record.id.MixId;

/** The register of groups of mixes that take one factor. The members are typed as one line, the tested mix left out. */
final class GroupsModel extends RecordModel<FactorGroup> {
    private static final String BETWEEN = "; ";
    private static final String USUAL_TOLERANCE = "3";

    static final Column<FactorGroup, List<MixId>> MEMBERS = Column.any(
            "members",
            CellType.word(GroupsModel::members, GroupsModel::line),
            (FactorGroup group) -> Optional.of(group.others()).filter(others -> !others.isEmpty()));

    private static final Columns<FactorGroup> TYPED = Columns.of(
                    "factor_group",
                    GroupsModel::made,
                    GroupColumns.ID,
                    GroupColumns.TITLE,
                    GroupColumns.TESTED_MIX,
                    GroupColumns.TOLERANCE,
                    MEMBERS,
                    GroupColumns.REASON)
            .checked(FactorGroup::check);

    GroupsModel(DeskModel desk, Texts texts) {
        super(desk, texts, FactorGroup.class, TYPED, "group", () -> blank(desk));
        follow();
    }

    private static TypedDraft blank(DeskModel desk) {
        return TypedDraft.BLANK
                .with(GroupColumns.TESTED_MIX, desk.selected().map(MixId::text).orElse(""))
                .with(GroupColumns.TOLERANCE, USUAL_TOLERANCE);
    }

    private static FactorGroup made(Cells cells) {
        List<MixId> members = new ArrayList<>(List.of(cells.get(GroupColumns.TESTED_MIX)));
        members.addAll(cells.any(MEMBERS).orElse(List.of()));
        return new FactorGroup(
                cells.get(GroupColumns.ID),
                cells.get(GroupColumns.TITLE),
                cells.get(GroupColumns.TESTED_MIX),
                cells.get(GroupColumns.TOLERANCE),
                members,
                cells.get(GroupColumns.REASON));
    }

    private static List<MixId> members(String line) {
        return Stream.of(line.split("[;,]", -1))
                .map(String::strip)
                .filter(id -> !id.isEmpty())
                .map(MixId::new)
                .toList();
    }

    private static String line(List<MixId> members) {
        return members.stream().map(MixId::text).collect(Collectors.joining(BETWEEN));
    }

    /** What is tested on another mix is another group. */
    @Override
    public boolean isFixed(Column<?, ?> column) {
        return super.isFixed(column) || column == GroupColumns.TESTED_MIX && !isNew();
    }

    @Override
    Optional<String> reasonTyped() {
        return Optional.of(draft().text(GroupColumns.REASON).strip()).filter(text -> !text.isEmpty());
    }

    @Override
    List<Problem> lookAt(FactorGroup group) {
        Optional<FactorGroup> before = base().map(Version::value);
        if (before.filter(group::equals).isPresent()) {
            return List.of();
        }
        List<Problem> problems = new ArrayList<>(GroupGate.oldReason(group, before));
        // What nobody looked up yet cannot be kept; words make no difference to the mixes.
        FactorGroup asked = group.said("", before.map(old -> old.reason() + ".").orElse(""));
        problems.addAll(desk().answer(new CheckOf(asked, before))
                .orElseGet(
                        () -> List.of(Problem.error("members", "group.looking").of(Problem.Kind.NOT_YET))));
        return problems;
    }

    /** Asks what is wrong or doubtful about a group. */
    private record CheckOf(FactorGroup group, Optional<FactorGroup> before) implements Question<List<Problem>> {
        @Override
        public List<Problem> answer(Reading seen) {
            return GroupGate.check(seen.book(), group, before);
        }
    }

    /** Returns the group on view as it stands now; empty of a new one and while it is looked up. */
    Optional<GroupLook> look() {
        return base().flatMap(version -> desk().answer(new LookAt(version)));
    }

    /** Asks how the members of a group stand. */
    private record LookAt(Version<FactorGroup> group) implements Question<GroupLook> {
        @Override
        public GroupLook answer(Reading seen) {
            LocalDateTime now = seen.moment();
            return GroupLook.of(seen.standing()::each, group, now);
        }
    }

    /**
     * Returns the mixes that are like the tested one within the tolerance, both as typed, and not among the members typed; empty while
     * they are looked up, or where nothing is typed that can be looked up.
     */
    Optional<List<LikeMix>> candidates() {
        String tested = draft().text(GroupColumns.TESTED_MIX).strip();
        Optional<BigDecimal> tolerance = desk().tools()
                .numbers()
                .parse(draft().text(GroupColumns.TOLERANCE))
                .filter(Limit.LIKENESS::holds);
        List<MixId> members = members(draft().text(MEMBERS));
        return tolerance
                .filter(any -> !tested.isEmpty())
                .flatMap(within -> desk().answer(new LikeOf(new MixId(tested), within)))
                .map(all -> all.stream()
                        .filter(mix -> !members.contains(mix.mixId()))
                        .toList());
    }

    /** Asks for the mixes that are like one. */
    private record LikeOf(MixId tested, BigDecimal tolerance) implements Question<List<LikeMix>> {
        @Override
        public List<LikeMix> answer(Reading seen) {
            return seen.book()
                    .latest(MixDesign.class, tested.text())
                    .map(mix -> LikeMix.of(seen.book(), mix.value(), tolerance))
                    .orElse(List.of());
        }
    }

    /** Puts a mix among the members typed. */
    void add(MixId mix) {
        List<MixId> members = new ArrayList<>(members(draft().text(MEMBERS)));
        members.add(mix);
        type(MEMBERS, line(members));
    }

    /** Says of the group on view how many of its members have its factor, and who drifted out; blank of a new one. */
    @Override
    String note() {
        return look().map(found -> texts().get(
                                "group.note",
                                Integer.toString(found.members().size()),
                                Long.toString(found.members().stream()
                                        .filter(member -> member.hasGroupFactor(
                                                found.group().value()))
                                        .count()),
                                Long.toString(found.members().stream()
                                        .filter(member -> !member.likeness().isLike())
                                        .count())))
                .orElse("");
    }

    /** Says how far a mix is, with its sign; blank where it cannot be compared. */
    String far(double number) {
        return Double.isFinite(number) ? desk().tools().numbers().show(number, 1) : "";
    }

    /** Returns what is the matter with the members of a group, each thing once. */
    static List<Problem> matters(GroupLook look) {
        return look.members().stream()
                .flatMap(member -> member.matters(look.group().value()).stream())
                .distinct()
                .toList();
    }
}
