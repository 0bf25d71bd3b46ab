package porebench.desk.frame.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.record.LaboratoryProfile;
import porebench.record.book.Draft;
import porebench.record.book.MemoryLabBook;
import porebench.store.Books;

/** The laboratory's own copy of a profile, from its beginning to a second version. */
class ProfileModelTest {
    private final MemoryLabBook book = new MemoryLabBook(Books.CLOCK);
    private final ProfileModel model = model("astm-c231");

    private ProfileModel model(String profileId) {
        return new ProfileModel(book.latest(LaboratoryProfile.class), FrameTexts.in(Locale.ENGLISH), profileId);
    }

    private void keep(ProfileModel draft) {
        assertThat(book.keep(List.of(draft.record().orElseThrow()), "M. Quist", "own figures"))
                .isEmpty();
    }

    private static List<String> codes(ProfileModel model) {
        return model.problems().stream()
                .map(problem -> problem.field() + " " + problem.code())
                .toList();
    }

    @Test
    void aProfileThatIsNotThereShowsTheUsualOne() {
        assertThat(model("nobody-s").shown()).isEqualTo(Profiles.standard());
        assertThat(model.shown().id()).isEqualTo("astm-c231");
        assertThat(model.isNew()).isFalse();
        assertThat(model.isChanged()).isFalse();
    }

    @Test
    void aKeptCopyStandsBehindTheNamedOnesAndIsCorrectedByItsNextVersion() {
        model.copy();
        assertThat(model.isNew()).isTrue();
        assertThat(model.isChanged()).isTrue();
        keep(model);
        ProfileModel again = model("astm-c231-own");
        assertThat(again.profiles())
                .extracting(Profile::id)
                .hasSize(Profiles.named().size() + 1)
                .last()
                .isEqualTo("astm-c231-own");
        assertThat(again.isOwn()).isTrue();
        assertThat(again.isNew()).isFalse();
        assertThat(again.isChanged()).isFalse();
        assertThat(again.canSave()).isFalse();
        again.change(FigureName.LEAST_TRIALS, "5");
        assertThat(again.isChanged()).isTrue();
        assertThat(again.canSave()).isTrue();
        assertThat(again.record().map(Draft::basedOn)).contains(1);
        keep(again);
        assertThat(book.history(LaboratoryProfile.class, "astm-c231-own")).hasSize(2);
    }

    @Test
    void aSecondCopyGetsAnotherNameAndATakenOneIsRefused() {
        model.copy();
        keep(model);
        ProfileModel second = model("astm-c231");
        second.copy();
        assertThat(second.draft().text(ProfileModel.ID)).isEqualTo("astm-c231-own-2");
        assertThat(codes(second)).isEmpty();
        changeName(second, " astm-c231-own ", "Ours");
        assertThat(codes(second)).containsExactly("id book.already-there");
        assertThat(second.record()).isEmpty();
        assertThat(second.canSave()).isFalse();
        changeName(second, " ours ", " Ours ");
        assertThat(codes(second)).isEmpty();
        keep(second);
        assertThat(book.latest(LaboratoryProfile.class, "ours")
                        .orElseThrow()
                        .value()
                        .profile()
                        .title())
                .isEqualTo("Ours");
    }

    @Test
    void aCopyNeedsAnIdAndATitle() {
        model.copy();
        changeName(model, " ", "");
        assertThat(codes(model)).containsExactly("id form.required", "title form.required");
        model.history().undo();
        assertThat(codes(model)).isEmpty();
    }

    @Test
    void onlyAChangedFigureIsTheLaboratorysOwn() {
        model.copy();
        Mark before = model.figures().get(FigureName.LEAST_TRIALS).mark();
        String value = model.figures().get(FigureName.LEAST_TRIALS).value();
        model.change(FigureName.LEAST_TRIALS, " " + value + " ");
        assertThat(model.figures().get(FigureName.LEAST_TRIALS).mark()).isEqualTo(before);
        assertThat(model.history().isChanged()).isFalse();
        model.change(FigureName.LEAST_TRIALS, "");
        assertThat(codes(model)).containsExactly("least-trials profile.out-of-range");
        assertThat(model.canSave()).isFalse();
    }

    @Test
    void anotherProfileOnViewDropsTheDraft() {
        model.copy();
        model.change(FigureName.LEAST_TRIALS, "5");
        model.show(Profiles.named().get(1));
        assertThat(model.isOwn()).isFalse();
        assertThat(model.isChanged()).isFalse();
        assertThat(model.draft().text(ProfileModel.ID))
                .isEqualTo(Profiles.named().get(1).id());
    }

    /** The window refuses such a name, a lab book that is filled from files does not. */
    @Test
    void anOwnProfileUnderTheNameOfAStandardStandsInItsPlace() {
        Profile other = Profiles.find("aashto-t152").orElseThrow();
        Books.keep(book, new LaboratoryProfile(other.copyAs("astm-c231", "Ours")));
        assertThat(model("astm-c231").profiles())
                .extracting(Profile::id)
                .containsExactly("aashto-t152", "en-12350-7", "jis-a1128", "astm-c231");
        assertThat(model("astm-c231").shown().title()).isEqualTo("Ours");
        assertThat(model("astm-c231").isOwn()).isTrue();
    }

    private static void changeName(ProfileModel model, String id, String title) {
        model.type(ProfileModel.ID, id);
        model.type(ProfileModel.TITLE, title);
    }
}
