package porebench.desk.frame.dialog;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.desk.ProfileOffer;
import porebench.desk.form.DraftModel;
import porebench.desk.form.DraftReader;
import porebench.desk.form.Numbers;
import porebench.desk.form.TypedDraft;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.Texts;
import porebench.method.profile.Profiles;
import porebench.record.LaboratoryProfile;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.column.ProfileColumns;

/** The figures of the profiles: those of named standards to read, the laboratory's own copies to change. */
public final class ProfileModel extends DraftModel {
    static final Column<LaboratoryProfile, String> ID = ProfileColumns.ID.called("id");
    static final Column<LaboratoryProfile, String> TITLE = ProfileColumns.TITLE.called("title");

    private List<Version<LaboratoryProfile>> own;
    private Profile shown = Profiles.standard();
    private Optional<Version<LaboratoryProfile>> base = Optional.empty();

    /**
     * Makes it.
     *
     * @param own the laboratory's own profiles
     * @param profileId the profile that is shown first
     */
    ProfileModel(List<Version<LaboratoryProfile>> own, Texts texts, String profileId) {
        super(texts, "profile.form.", TypedDraft.BLANK);
        this.own = own;
        show(profiles().stream()
                .filter(profile -> profile.id().equals(profileId))
                .findFirst()
                .orElse(Profiles.standard()));
    }

    /** Returns all profiles, those of named standards first. */
    List<Profile> profiles() {
        return ProfileOffer.with(own);
    }

    /** Takes the laboratory's own profiles as they are now. */
    void know(List<Version<LaboratoryProfile>> newest) {
        own = newest;
    }

    /** Shows a profile; a draft before is dropped. */
    void show(Profile profile) {
        shown = profile;
        base = own.stream()
                .filter(version -> version.value().recordId().equals(profile.id()))
                .findFirst();
        history().restart(draftOf(profile));
    }

    private static TypedDraft draftOf(Profile profile) {
        TypedDraft draft = TypedDraft.BLANK.with(ID, profile.id()).with(TITLE, profile.title());
        for (FigureName name : FigureName.values()) {
            draft = draft.with(value(name), profile.figure(name).value());
        }
        return draft;
    }

    /** Returns the column of a figure's value. */
    private static Column<ProfileColumns.Named, String> value(FigureName name) {
        return ProfileColumns.VALUE.called(wordsOf(name));
    }

    /** Returns the column that says whether a figure was changed, and so is the laboratory's own. */
    private static Column<ProfileColumns.Named, Boolean> isChanged(FigureName name) {
        return Column.<ProfileColumns.Named>mark("own", any -> false).called("own." + name.symbol());
    }

    /** Returns every figure as typed. */
    Map<FigureName, Figure> figures() {
        Map<FigureName, Figure> figures = new EnumMap<>(FigureName.class);
        for (FigureName name : FigureName.values()) {
            figures.put(
                    name,
                    draft().isYes(isChanged(name))
                            ? new Figure(draft().text(value(name)), texts().get("profile.own"), Mark.LABORATORY)
                            : shown.figure(name));
        }
        return figures;
    }

    Profile shown() {
        return shown;
    }

    /** Returns whether the profile on view is the laboratory's own, and so can be changed. */
    boolean isOwn() {
        return shown.basedOn().isPresent();
    }

    /** Begins the laboratory's own copy of the profile on view. */
    void copy() {
        String id = shown.id() + "-" + texts().get("profile.copy.id");
        while (isTaken(id)) {
            id = id + "-2";
        }
        Profile own = shown.copyAs(id, texts().get("profile.copy.title", shown.title()));
        shown = own;
        base = Optional.empty();
        history().restart(draftOf(own));
    }

    private boolean isTaken(String id) {
        return profiles().stream().anyMatch(profile -> profile.id().equals(id));
    }

    /** Changes the value of one figure; it is then the laboratory's own. One that was emptied is "-", and refused. */
    void change(FigureName name, String value) {
        String typed = value.strip();
        if (!typed.equals(draft().text(value(name)))) {
            update(
                    texts().get("profile.change", texts().get(wordsOf(name))),
                    draft().with(value(name), typed.isEmpty() ? "-" : typed).with(isChanged(name), true));
        }
    }

    @Override
    public String step(Column<?, ?> column) {
        return texts().get("profile.rename");
    }

    @Override
    public boolean isFixed(Column<?, ?> column) {
        return column == ID && !isNew();
    }

    /** Returns everything that is wrong with the draft. */
    List<Problem> problems() {
        DraftReader reader = new DraftReader(draft(), new Numbers(texts().locale()), this::words);
        reader.require(ID);
        reader.require(TITLE);
        List<Problem> problems = new ArrayList<>(reader.problems());
        if (base.isEmpty() && isTaken(typed(ID))) {
            problems.add(Problem.error(ID.field(), "book.already-there", texts().get("profile.word"), typed(ID)));
        }
        problems.addAll(Profile.check(figures()));
        return problems;
    }

    private String typed(Column<?, ?> column) {
        return draft().text(column).strip();
    }

    boolean canSave() {
        return isOwn() && isChanged() && !Problem.anyError(problems());
    }

    boolean isNew() {
        return isOwn() && base.isEmpty();
    }

    boolean isChanged() {
        return isNew() || history().isChanged();
    }

    /** Returns the draft of the record; empty while something is wrong. */
    Optional<Draft> record() {
        if (Problem.anyError(problems())) {
            return Optional.empty();
        }
        LaboratoryProfile own = new LaboratoryProfile(
                new Profile(typed(ID), typed(TITLE), shown.edition(), shown.basedOn(), figures()));
        return Optional.of(base.map(kept -> Draft.correcting(kept, own)).orElseGet(() -> Draft.of(own)));
    }

    static String wordsOf(FigureName name) {
        return "figure." + name.symbol();
    }
}
