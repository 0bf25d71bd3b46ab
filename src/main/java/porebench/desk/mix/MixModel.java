package porebench.desk.mix;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.desk.ProfileOffer;
import porebench.desk.form.History;
import porebench.desk.form.Numbers;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.Role;
import porebench.method.Texts;
import porebench.method.profile.Profiles;
import porebench.record.Draft;
import porebench.record.MixDesign;
import porebench.record.Source;
import porebench.record.Version;
import porebench.record.Wording;

/** The draft of a mix design, what is wrong with it, and how it becomes a version in the lab book. */
final class MixModel {
    private final DeskModel desk;
    private final Texts texts;
    private final Numbers numbers;
    private final History<MixDraft> history;
    private final KnownSources sources = new KnownSources();
    private final MixSteps steps;
    private List<Profile> profiles = List.of();
    private List<Version<MixDesign>> versions = List.of();
    private Optional<Version<MixDesign>> base = Optional.empty();
    private boolean begun;
    private boolean saveTried;
    private MixReading reading;

    MixModel(DeskModel desk) {
        this.desk = desk;
        this.texts = Texts.of("porebench.desk.mix.mix", desk.tools().locale());
        this.numbers = desk.tools().numbers();
        this.history = new History<>(blank());
        this.steps = new MixSteps(desk, history, texts, sources);
        this.reading = read();
        history.onChange(() -> reading = read());
        followDesk();
    }

    private MixDraft blank() {
        return MixDraft.empty(
                desk.units(),
                Profiles.DEFAULT_ID,
                List.of(
                        firstRow("first.cement", Role.CEMENT),
                        firstRow("first.water", Role.WATER),
                        firstRow("first.fine", Role.FINE),
                        firstRow("first.coarse", Role.COARSE)));
    }

    private MixRow firstRow(String key, Role role) {
        return MixRow.named(texts.get(key), role, desk.units().batchMass());
    }

    private MixReading read() {
        MixReading read = MixReader.read(history.draft(), numbers, texts);
        List<Problem> all = new ArrayList<>(read.problems());
        all.addAll(againstTheBook());
        read.mix().ifPresent(mix -> all.addAll(Wording.ofForm(mix, base.map(Version::value), desk.names())));
        return new MixReading(Problem.anyError(all) ? Optional.empty() : read.mix(), read.figures(), all);
    }

    private List<Problem> againstTheBook() {
        List<Problem> found = new ArrayList<>();
        String id = draft().text(MixField.ID).strip();
        if (base.isEmpty()
                && desk.rows().stream().anyMatch(row -> row.mixId().text().equals(id))) {
            found.add(Problem.error(MixField.ID.field(), "book.already-there", texts.get("record"), id));
        }
        for (int row = 0; row < draft().rows().size(); row++) {
            String source = draft().rows().get(row).text(MixColumn.SOURCE).strip();
            boolean isAggregate = draft().rows().get(row).role().isAggregate();
            if (isAggregate && !source.isEmpty() && sources.find(source).isEmpty()) {
                found.add(Problem.warning(MixColumn.SOURCE.fieldOf(row), "register.source-unknown", source));
            }
        }
        return found;
    }

    // What is shown.

    History<MixDraft> history() {
        return history;
    }

    MixDraft draft() {
        return history.draft();
    }

    /** Returns what a person can do to the draft. */
    MixSteps steps() {
        return steps;
    }

    /** Returns the saved version the draft was made from; empty for a new mix. */
    Optional<Version<MixDesign>> base() {
        return base;
    }

    /** Returns whether neither a mix is selected nor a new one begun. */
    boolean isEmpty() {
        return base.isEmpty() && !begun;
    }

    MixReading reading() {
        return reading;
    }

    /** Returns the problems a person should see by now: not yet that what they are about to type is missing. */
    List<Problem> shownProblems() {
        return saveTried
                ? reading.problems()
                : reading.problems().stream().filter(this::isDueNow).toList();
    }

    private boolean isDueNow(Problem problem) {
        String[] parts = problem.field().split("\\.");
        if (parts.length == 3) {
            return draft().rows().get(Integer.parseInt(parts[1])).hasMass();
        }
        return base.isPresent() || !problem.code().equals("form.required");
    }

    /** Returns the profiles to choose from, the laboratory's own ones last. */
    List<Profile> profiles() {
        return profiles;
    }

    /** Returns the sources in the register that fit a role. */
    List<Source> sourcesFor(Role role) {
        return sources.fitting(role);
    }

    /** Returns all versions of the mix, the newest first. */
    List<Version<MixDesign>> versions() {
        return versions;
    }

    /** Returns what changed from one version to the next, in words. */
    List<String> changes(MixDesign before, MixDesign after) {
        return MixChanges.between(
                MixDraft.of(before, numbers, desk.units()), MixDraft.of(after, numbers, desk.units()), texts);
    }

    // What is begun, shown and saved.

    /** Begins a new mix design. */
    void begin() {
        begun = true;
        restart(Optional.empty(), blank());
    }

    /** Drops the draft and shows what the lab book says. */
    void dropDraft() {
        begun = false;
        load();
    }

    /** Shows the selected mix if another one was selected or it was corrected, unless there is an unsaved draft. */
    void followDesk() {
        sources.read(desk.book());
        profiles = ProfileOffer.in(desk.book());
        Optional<Version<MixDesign>> selected = desk.evidence().map(evidence -> evidence.mix());
        if (!history.isChanged() && !selected.equals(base)) {
            begun = false;
            load();
        } else {
            reading = read();
        }
    }

    private void load() {
        Optional<Version<MixDesign>> selected = desk.evidence().map(evidence -> evidence.mix());
        restart(
                selected,
                selected.map(mix -> MixDraft.of(mix.value(), numbers, desk.units()))
                        .orElseGet(this::blank));
    }

    private void restart(Optional<Version<MixDesign>> from, MixDraft draft) {
        base = from;
        saveTried = false;
        versions = new ArrayList<>();
        base.ifPresent(version -> versions.addAll(
                desk.book().history(MixDesign.class, version.value().recordId())));
        Collections.reverse(versions);
        history.restart(draft);
    }

    /** Returns how many errors kept a tried saving from being done; 0 when saving was not tried. */
    int errorsInTheWay() {
        return saveTried
                ? (int) reading.problems().stream().filter(Problem::isError).count()
                : 0;
    }

    /** Notes that saving was tried: from now on everything missing is said. */
    void trySaving() {
        saveTried = true;
    }

    /** Returns what saving the draft would do to a factor and to trials of the mix. */
    SavingEffects effects() {
        return SavingEffects.of(desk, base, reading.mix());
    }

    /**
     * Saves the draft as a new mix or as a new version.
     *
     * @param why the reason that will stand in the lab book
     * @return why it was not saved; empty when it was
     */
    List<Problem> save(String why) {
        MixDesign mix = reading.mix().orElseThrow();
        Draft record = base.isPresent() ? Draft.correcting(base.get(), mix) : Draft.of(mix);
        List<Problem> refused = desk.keep(List.of(record), why);
        if (refused.isEmpty()) {
            begun = false;
            restart(desk.book().latest(MixDesign.class, mix.recordId()), MixDraft.of(mix, numbers, desk.units()));
            desk.select(mix.id());
        }
        return refused;
    }

    Texts texts() {
        return texts;
    }
}
