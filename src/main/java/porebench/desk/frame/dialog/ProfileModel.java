package porebench.desk.frame.dialog;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.desk.ProfileOffer;
import porebench.desk.form.History;
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

/** The figures of the profiles: those of named standards to read, the laboratory's own copies to change. */
public final class ProfileModel {
    private List<Version<LaboratoryProfile>> own;
    private final Texts texts;
    private final History<Copy> history = new History<>(new Copy("", "", Map.of()));
    private Profile shown = Profiles.standard();
    private Optional<Version<LaboratoryProfile>> base = Optional.empty();

    /**
     * A laboratory's own copy as it is being changed.
     *
     * @param id its short name
     * @param title its name for people
     * @param figures every figure as typed
     */
    record Copy(String id, String title, Map<FigureName, Figure> figures) {
        Copy {
            figures = Map.copyOf(figures);
        }
    }

    /**
     * Makes it.
     *
     * @param own the laboratory's own profiles
     * @param profileId the profile that is shown first
     */
    ProfileModel(List<Version<LaboratoryProfile>> own, Texts texts, String profileId) {
        this.own = own;
        this.texts = texts;
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
        history.restart(copyOf(profile));
    }

    private static Copy copyOf(Profile profile) {
        Map<FigureName, Figure> figures = new EnumMap<>(FigureName.class);
        for (FigureName name : FigureName.values()) {
            figures.put(name, profile.figure(name));
        }
        return new Copy(profile.id(), profile.title(), figures);
    }

    Profile shown() {
        return shown;
    }

    /** Returns whether the profile on view is the laboratory's own, and so can be changed. */
    boolean isOwn() {
        return shown.basedOn().isPresent();
    }

    Copy draft() {
        return history.draft();
    }

    History<Copy> history() {
        return history;
    }

    /** Begins the laboratory's own copy of the profile on view. */
    void copy() {
        String id = shown.id() + "-" + texts.get("profile.copy.id");
        while (isTaken(id)) {
            id = id + "-2";
        }
        Profile own = shown.copyAs(id, texts.get("profile.copy.title", shown.title()));
        shown = own;
        base = Optional.empty();
        history.restart(copyOf(own));
    }

    private boolean isTaken(String id) {
        return profiles().stream().anyMatch(profile -> profile.id().equals(id));
    }

    /** Changes the value of one figure; it is then the laboratory's own. One that was emptied is "-", and refused. */
    void change(FigureName name, String value) {
        Figure before = draft().figures().get(name);
        String typed = value.strip();
        if (before == null || before.value().equals(typed)) {
            return;
        }
        Map<FigureName, Figure> figures = new EnumMap<>(draft().figures());
        String shownValue = typed.isEmpty() ? "-" : typed;
        figures.put(name, new Figure(shownValue, texts.get("profile.own"), Mark.LABORATORY));
        history.update(
                texts.get("profile.change", texts.get(wordsOf(name))),
                new Copy(draft().id(), draft().title(), figures));
    }

    void changeName(String id, String title) {
        history.update(texts.get("profile.rename"), new Copy(id, title, draft().figures()));
    }

    /** Returns everything that is wrong with the draft. */
    List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        if (draft().id().isBlank()) {
            problems.add(Problem.missing("id", texts.get("profile.id.plain")));
        } else if (base.isEmpty() && isTaken(draft().id().strip())) {
            problems.add(Problem.error(
                    "id",
                    "book.already-there",
                    texts.get("profile.word"),
                    draft().id().strip()));
        }
        if (draft().title().isBlank()) {
            problems.add(Problem.missing("title", texts.get("profile.title.plain")));
        }
        problems.addAll(Profile.check(draft().figures()));
        return problems;
    }

    boolean canSave() {
        return isOwn() && isChanged() && !Problem.anyError(problems());
    }

    boolean isNew() {
        return isOwn() && base.isEmpty();
    }

    boolean isChanged() {
        return isNew() || history.isChanged();
    }

    /** Returns the draft of the record; empty while something is wrong. */
    Optional<Draft> record() {
        if (Problem.anyError(problems())) {
            return Optional.empty();
        }
        LaboratoryProfile own = new LaboratoryProfile(new Profile(
                draft().id().strip(), draft().title().strip(), shown.edition(), shown.basedOn(), draft().figures()));
        return Optional.of(base.map(kept -> Draft.correcting(kept, own)).orElseGet(() -> Draft.of(own)));
    }

    static String wordsOf(FigureName name) {
        return "figure." + name.symbol();
    }
}
