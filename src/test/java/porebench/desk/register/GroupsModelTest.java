package porebench.desk.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.DeskModel;
import porebench.desk.Refused;
import porebench.evidence.TimeBook;
import porebench.evidence.group.GroupLook;
import porebench.evidence.group.LikeMix;
import porebench.method.Problem;
import porebench.record.FactorGroup;
import porebench.record.MixDesign;
import porebench.record.SampleGroups;
import porebench.record.book.Draft;
import porebench.record.book.MemoryLabBook;
import porebench.record.column.GroupColumns;
import porebench.record.id.MixId;

/** The register of groups: M-1 with 40 % of sand, M-2 with another stone, M-3 with 41 %, M-4 with 44 %. */
class GroupsModelTest {
    private DeskModel desk;
    private MemoryLabBook book;

    @BeforeEach
    void fillBook() {
        TimeBook time = new TimeBook();
        time.keep(SampleGroups.mix("M-3", "717.5", "1032.5"), SampleGroups.mix("M-4", "770", "980"));
        book = time.book;
        desk = RegisterModelsTest.desk(book);
        desk.select(new MixId("M-1"));
    }

    private GroupsModel groups() {
        return new GroupsModel(desk, RecordPage.texts(desk));
    }

    private static List<String> codes(GroupsModel model) {
        return model.problems().stream().map(Problem::code).toList();
    }

    private GroupsModel begun() {
        GroupsModel model = groups();
        model.begin();
        model.type(GroupColumns.ID, "G-1");
        model.type(GroupColumns.REASON, "one quarry");
        return model;
    }

    private static List<String> candidates(GroupsModel model) {
        return model.candidates().orElseThrow().stream()
                .map(mix -> mix.mixId().text())
                .toList();
    }

    @Test
    void aNewGroupBeginsWithTheSelectedMixAndListsWhatIsLikeIt() {
        GroupsModel model = groups();
        model.begin();
        assertThat(model.draft().text(GroupColumns.TESTED_MIX)).isEqualTo("M-1");
        assertThat(candidates(model)).containsExactly("M-3");
        LikeMix found = model.candidates().orElseThrow().get(0);
        assertThat(model.far(found.likeness().apartPoints())).isEqualTo("1.0");
        model.type(GroupColumns.TOLERANCE, "4");
        assertThat(candidates(model)).containsExactly("M-3", "M-4");
        model.type(GroupColumns.TOLERANCE, "0.9");
        assertThat(candidates(model)).isEmpty();
        model.type(GroupColumns.TOLERANCE, "11");
        assertThat(model.candidates()).isEmpty();
        model.type(GroupColumns.TOLERANCE, "4");
        model.type(GroupColumns.TESTED_MIX, "M-77");
        assertThat(candidates(model)).isEmpty();
        model.type(GroupColumns.TESTED_MIX, "");
        assertThat(model.candidates()).isEmpty();
        assertThat(model.far(Double.POSITIVE_INFINITY)).isEmpty();
    }

    @Test
    void aMixIsAddedWithAKeyAndKept() {
        GroupsModel model = begun();
        assertThat(model.trySaving()).isFalse();
        assertThat(codes(model)).containsExactly("group.no-members");
        model.add(new MixId("M-3"));
        assertThat(model.draft().text(GroupsModel.MEMBERS)).isEqualTo("M-3");
        assertThat(candidates(model)).isEmpty();
        assertThat(codes(model)).isEmpty();
        assertThat(Refused.by(out -> model.save("one quarry", out))).isEmpty();
        assertThat(book.latest(FactorGroup.class, "G-1").orElseThrow().value().members())
                .containsExactly(new MixId("M-1"), new MixId("M-3"));
        GroupLook look = model.look().orElseThrow();
        assertThat(look.members()).extracting(member -> member.mixId().text()).containsExactly("M-1", "M-3");
        assertThat(model.note())
                .isEqualTo("Members: 2; with the factor of the group: 0; no longer similar to the tested mix: 0.");
        assertThat(GroupsModel.matters(look)).isEmpty();
        assertThat(model.isFixed(GroupColumns.TESTED_MIX)).isTrue();
        assertThat(model.isFixed(GroupColumns.TOLERANCE)).isFalse();
    }

    @Test
    void whatTheOneRuleRefusesCannotBeSaved() {
        GroupsModel model = begun();
        model.type(GroupsModel.MEMBERS, "M-3; M-4");
        assertThat(codes(model)).containsExactly("group.share-off", "group.share-off");
        assertThat(model.trySaving()).isFalse();
        model.type(GroupsModel.MEMBERS, "M-2");
        assertThat(codes(model)).containsExactly("group.source-other");
        model.type(GroupsModel.MEMBERS, "M-3, M-3");
        assertThat(codes(model)).containsExactly("group.member-twice");
        model.type(GroupsModel.MEMBERS, "M-3, M-77");
        assertThat(codes(model)).containsExactly("group.unknown-mix");
        model.type(GroupsModel.MEMBERS, "M-3");
        assertThat(model.trySaving()).isTrue();
    }

    @Test
    void aChangeOfAGroupAsksForItsOwnReason() {
        GroupsModel model = begun();
        model.add(new MixId("M-3"));
        assertThat(Refused.by(out -> model.save("one quarry", out))).isEmpty();
        assertThat(codes(model)).isEmpty();
        model.type(GroupColumns.TOLERANCE, "4");
        assertThat(codes(model)).containsExactly("group.reason-old");
        model.type(GroupColumns.REASON, "M-4 is to come in");
        model.add(new MixId("M-4"));
        assertThat(codes(model)).isEmpty();
        assertThat(model.reasonTyped()).contains("M-4 is to come in");
        assertThat(Refused.by(out -> model.save("M-4 is to come in", out))).isEmpty();
        assertThat(book.history(FactorGroup.class, "G-1")).hasSize(2);
        assertThat(model.changes(
                        model.versions().get(1).value(), model.versions().get(0).value()))
                .contains("Tolerance: 3 → 4", "Members: M-3 → M-3; M-4");
    }

    /** Who drifted out stays on view with why, and does not stand in the way of the next version. */
    @Test
    void whoDriftedOutIsNamed() {
        GroupsModel model = begun();
        model.add(new MixId("M-3"));
        assertThat(Refused.by(out -> model.save("one quarry", out))).isEmpty();
        book.keep(
                List.of(Draft.correcting(
                        book.latest(MixDesign.class, "M-3").orElseThrow(), SampleGroups.mix("M-3", "770", "980"))),
                "R. Vale",
                "more sand");
        desk.refresh();
        GroupLook look = model.look().orElseThrow();
        assertThat(GroupsModel.matters(look))
                .extracting(Problem::code)
                .containsExactly("group.share-off", "group.share-off");
        assertThat(model.note()).endsWith("no longer similar to the tested mix: 1.");
        model.type(GroupColumns.TITLE, "one sand, one stone");
        model.type(GroupColumns.REASON, "a title");
        assertThat(codes(model)).containsExactly("group.share-off", "group.share-off");
        assertThat(model.trySaving()).isTrue();
    }
}
