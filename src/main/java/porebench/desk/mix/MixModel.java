package porebench.desk.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.ProfileOffer;
import porebench.desk.Question;
import porebench.desk.RecordDraft;
import porebench.desk.form.Numbers;
import porebench.desk.form.PartWords;
import porebench.desk.form.TypedDraft;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.Role;
import porebench.method.Texts;
import porebench.quantity.VolumeUnit;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.Source;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.column.MixColumns;
import porebench.record.id.MixId;

/** The draft of a mix design, what is wrong with it, and how it becomes a version in the lab book. */
final class MixModel extends RecordDraft<MixDesign> {
    private static final List<String> BATCH_UNITS = Stream.of(
                    VolumeUnit.CUBIC_METRE, VolumeUnit.LITRE, VolumeUnit.CUBIC_FOOT, VolumeUnit.CUBIC_YARD)
            .map(VolumeUnit::symbol)
            .toList();

    private final Numbers numbers;
    private final KnownSources sources = new KnownSources();
    private final Constituents constituents;
    private List<Profile> profiles = List.of();
    private Optional<MixId> shown = Optional.empty();
    private boolean begun;
    private Optional<String> copied = Optional.empty();
    private MixReading reading;

    MixModel(DeskModel desk) {
        super(desk, Texts.of("porebench.desk.mix.mix", desk.tools().locale()), MixDesign.class, MixColumns.ALL);
        this.numbers = desk.tools().numbers();
        this.constituents = new Constituents(this, sources);
        restart(Optional.empty(), blank());
        this.reading = read();
        history().onChange(() -> reading = read());
        followDesk();
    }

    private TypedDraft blank() {
        return MixFields.blank(
                desk().units(),
                List.of(
                        firstRow("first.cement", Role.CEMENT),
                        firstRow("first.water", Role.WATER),
                        firstRow("first.fine", Role.FINE),
                        firstRow("first.coarse", Role.COARSE)));
    }

    private TypedDraft firstRow(String key, Role role) {
        return MixFields.row(texts().get(key), role, desk().units());
    }

    // The fields and the table.

    @Override
    public void update(String label, TypedDraft changed) {
        super.update(texts().get("step.change", label), changed);
    }

    @Override
    public String key(Column<?, ?> column) {
        return "mix." + column.field();
    }

    @Override
    public boolean isChosen(Column<?, ?> column) {
        return column == MixColumns.PROFILE || super.isChosen(column);
    }

    @Override
    public List<String> choices(Column<?, ?> column) {
        return column == MixColumns.PROFILE ? profiles.stream().map(Profile::id).toList() : super.choices(column);
    }

    @Override
    public String choiceWords(Column<?, ?> column, String symbol) {
        return column == MixColumns.PROFILE
                ? profile(symbol).map(Profile::title).orElse(symbol)
                : super.choiceWords(column, symbol);
    }

    @Override
    public List<String> units(Column<?, ?> column) {
        return column == MixColumns.VOLUME ? BATCH_UNITS : super.units(column);
    }

    List<TypedDraft> rows() {
        return draft().rows(MixColumns.CONSTITUENTS);
    }

    private MixReading read() {
        MixReading read = MixReader.read(draft(), numbers, this);
        List<Problem> all = new ArrayList<>(read.problems());
        all.addAll(againstTheBook());
        read.mix().ifPresent(mix -> all.addAll(wording(mix)));
        return new MixReading(Problem.anyError(all) ? Optional.empty() : read.mix(), read.figures(), all);
    }

    private List<Problem> againstTheBook() {
        List<Problem> found = new ArrayList<>();
        if (isNew() && desk().rows().stream().anyMatch(row -> row.mixId().text().equals(typedName()))) {
            found.add(alreadyThere(texts().get("record")));
        }
        for (int row = 0; row < rows().size(); row++) {
            String source = rows().get(row).text(MixColumns.SOURCE).strip();
            boolean isAggregate = rows().get(row).chosen(MixColumns.ROLE).isAggregate();
            if (isAggregate && !source.isEmpty() && sources.find(source).isEmpty()) {
                found.add(Problem.warning(
                        constituents.problemsUnder() + row + "." + MixColumns.SOURCE.field(),
                        "register.source-unknown",
                        source));
            }
        }
        return found;
    }

    // What is shown.

    /** Returns the table of constituents. */
    Constituents constituents() {
        return constituents;
    }

    /** Returns whether neither a mix is selected nor a new one begun. */
    boolean isEmpty() {
        return isNew() && !begun;
    }

    MixReading reading() {
        return reading;
    }

    /** Returns the problems a person should see by now: not yet that what they are about to type is missing. */
    List<Problem> shownProblems() {
        return isTried()
                ? reading.problems()
                : reading.problems().stream().filter(this::isDueNow).toList();
    }

    private boolean isDueNow(Problem problem) {
        String[] parts = problem.field().split("\\.");
        if (parts.length == 3) {
            return MixFields.weighed(draft()).contains(Integer.parseInt(parts[1]));
        }
        return !isNew() || problem.kind() != Problem.Kind.NOT_YET;
    }

    /** Returns one of the profiles to choose from. */
    Optional<Profile> profile(String id) {
        return profiles.stream().filter(profile -> profile.id().equals(id)).findFirst();
    }

    /** Returns the sources in the register that fit a role. */
    List<Source> sourcesFor(Role role) {
        return sources.fitting(role);
    }

    /** Returns what changed from one version to the next, in words. */
    List<String> changes(MixDesign before, MixDesign after) {
        return MixChanges.between(
                MixFields.of(before, numbers, desk().units()),
                MixFields.of(after, numbers, desk().units()),
                this,
                texts());
    }

    // What is begun, shown and saved.

    @Override
    protected TypedDraft typed(MixDesign mix) {
        return MixFields.of(mix, numbers, desk().units());
    }

    @Override
    protected List<Column<MixDesign, ?>> compared() {
        return MixFields.COMPARED;
    }

    @Override
    protected PartWords partWords(Column<?, ?> column) {
        return constituents.words();
    }

    /** A constituent is known by its source in its role; one without by its name. */
    @Override
    protected List<List<Column<?, ?>>> partNames(Column<?, ?> column) {
        return List.of(
                List.of(MixColumns.ROLE, MixColumns.SOURCE),
                List.of(MixColumns.ROLE, MixColumns.NAME),
                List.of(MixColumns.NAME));
    }

    private static String nameOf(Optional<MixId> mix) {
        return "mix/" + mix.map(MixId::text).orElse("");
    }

    /** Begins a new mix design, or goes on with the one that was begun and not saved. */
    void begin() {
        begun = true;
        shown = Optional.empty();
        turnTo(nameOf(shown), Optional.empty(), blank());
    }

    /** Returns whether a new mix design was begun and is not saved. */
    boolean isOneBegun() {
        return desk().unsaved().find(nameOf(Optional.empty())).isPresent();
    }

    /**
     * Begins a new mix design with what the lab book says of the one on view, but for its name; nothing that was done with that
     * mix is taken along. One that was begun and not saved is dropped.
     */
    void beginCopy() {
        Version<MixDesign> from = base().orElseThrow();
        desk().unsaved().drop(nameOf(Optional.empty()));
        begun = true;
        shown = Optional.empty();
        turnTo(nameOf(shown), Optional.empty(), typed(from.value()).with(MixColumns.ID, ""));
        copied = Optional.of(texts().get("copy.why", from.value().id().text(), Integer.toString(from.number())));
    }

    @Override
    protected void restart(Optional<Version<MixDesign>> from, TypedDraft draft) {
        copied = Optional.empty();
        super.restart(from, draft);
    }

    /** Returns of which mix a new one is a copy, in words; empty where it is none, or that is not known any more. */
    Optional<String> copied() {
        return copied;
    }

    /** Drops the draft and shows what the lab book says. */
    void dropDraft() {
        if (!takeBack(texts().get("step.drop"))) {
            begun = false;
            load();
        }
    }

    /** Shows the selected mix, with the draft of it that was not saved; or as it was corrected, unless there is such a draft. */
    void followDesk() {
        sources.know(desk().answer(new Question.Newest<>(Source.class)).orElse(List.of()));
        profiles = ProfileOffer.with(
                desk().answer(new Question.Newest<>(LaboratoryProfile.class)).orElse(List.of()));
        Optional<Version<MixDesign>> selected = desk().evidence().map(evidence -> evidence.mix());
        boolean isOther = !desk().selected().equals(shown) || isOfAnotherBook();
        if (isOther && !(begun && selected.isEmpty())) {
            begun = false;
            shown = desk().selected();
            turnAway();
            shown.ifPresentOrElse(
                    mix -> turnTo(nameOf(shown), selected, typed(selected.get().value())), this::load);
        } else if (!begun && !history().isChanged() && !selected.equals(base())) {
            load();
        } else {
            reading = read();
        }
    }

    private void load() {
        Optional<Version<MixDesign>> selected = desk().evidence().map(evidence -> evidence.mix());
        restart(selected, selected.map(mix -> typed(mix.value())).orElseGet(this::blank));
    }

    /** Returns how many errors kept a tried saving from being done; 0 when saving was not tried. */
    int errorsInTheWay() {
        return errorsIn(reading.problems());
    }

    /** Notes that saving was tried: from now on everything missing is said. */
    void trySaving() {
        setTried();
    }

    /** Looks up what saving the draft would do to a factor and to trials of the mix. */
    void effects(Consumer<SavingEffects> then) {
        desk().ask(new SavingEffects.Of(base(), reading.mix()), then);
    }

    /**
     * Saves the draft as a new mix or as a new version.
     *
     * @param why the reason that will stand in the lab book
     * @param outcome hears why it was not saved; empty when it was
     */
    void save(String why, Outcome outcome) {
        MixDesign mix = reading.mix().orElseThrow();
        desk().keep(List.of(kept(mix)), why, outcome.first(() -> {
            if (desk().selected().filter(mix.id()::equals).isPresent()) {
                load();
            } else {
                // What was kept is no draft any more; the mix as it stands in the lab book comes with the selection.
                history().restart(typed(mix));
                desk().select(mix.id());
            }
        }));
    }
}
