package porebench.desk;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import porebench.desk.form.Tasks;
import porebench.desk.form.UnitSystem;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryEquipment;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.MeterStory;
import porebench.evidence.RegisterRow;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Profile;
import porebench.method.Texts;
import porebench.record.Laboratory;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Namesakes;
import porebench.record.book.Progress;
import porebench.record.id.MixId;

/**
 * What the window is looking at: the lab book, the selected mix with its evidence, the unit system and the person.
 *
 * <p>Knows no Swing. Used on one thread. Every screen listens and shows itself anew when something changed; a screen with
 * an unsaved draft keeps its draft.
 */
public final class DeskModel {
    private final Tools tools;
    private final Texts texts;
    private final Object oneAtATime = new Object();
    private final Answers answers;
    private final Unsaved unsaved;
    private final List<Attention> attentions = new ArrayList<>();
    private final List<Runnable> onDoing = new ArrayList<>();
    private Attention listening = attention();
    private Reading seen;
    private Namesakes names;
    private Optional<MixId> selected = Optional.empty();
    private Optional<Evidence> evidence = Optional.empty();
    private String person = "";
    private String doing = "";
    private int selections;
    private boolean refreshing;

    /** Makes a desk on which no lab book lies yet. */
    public DeskModel(Tools tools) {
        this(tools, new NoBook());
    }

    public DeskModel(Tools tools, LabBook book) {
        this.tools = tools;
        this.texts = Texts.of("porebench.desk.desk", tools.locale());
        this.unsaved = new Unsaved(tools.locale());
        this.seen = Reading.of(book, tools.now());
        this.answers = new Answers(tools.tasks(), oneAtATime, seen, this::heard);
        this.names = answers.names();
    }

    public Tools tools() {
        return tools;
    }

    /** Returns what was typed and is not saved yet. */
    public Unsaved unsaved() {
        return unsaved;
    }

    /** Returns the open lab book; an empty one that keeps nothing while none is open. */
    public LabBook book() {
        return seen.book();
    }

    /** Returns whether a lab book is open. */
    public boolean hasBook() {
        return !(book() instanceof NoBook);
    }

    /** Turns to another lab book that has been read; returns the one before, which is to be closed. */
    public LabBook turnTo(Reading other) {
        LabBook before = book();
        selections++;
        selected = Optional.empty();
        take(new Look(other, Optional.empty(), Optional.empty(), Map.of()));
        return before;
    }

    /** Turns away from the lab book, so that none is open; returns it, which is to be closed. */
    public LabBook turnAway() {
        return turnTo(Reading.of(new NoBook(), tools.now()));
    }

    /** Ends: nobody hears of anything any more. Returns the lab book, which is to be closed. */
    public LabBook end() {
        attentions.clear();
        return turnAway();
    }

    /** Returns whose lab book it is; empty while nobody said so. */
    public Optional<Laboratory> laboratory() {
        return seen.laboratory();
    }

    /** Returns whether it is a training book: nothing in it was measured, and everything shown of it says so. */
    public boolean isTraining() {
        return seen.laboratory().map(Laboratory::training).orElse(false);
    }

    /** Returns whether it is the demo's, wherever it lies: everything in it is invented. */
    public boolean isDemo() {
        return seen.isDemo();
    }

    /** Returns one line a mix, as they stand today. */
    public List<RegisterRow> rows() {
        return seen.rows();
    }

    /** Returns how all mixes stand, as of the last change of the lab book. */
    public LaboratoryStanding standing() {
        return seen.standing();
    }

    /** Returns how trials scatter in the laboratory, as of the last change of the lab book. */
    public LaboratoryScatter scatter() {
        return seen.scatter();
    }

    /** Returns the equipment with what held on earlier days, as of the last change of the lab book. */
    public LaboratoryEquipment equipment() {
        return seen.standing().equipment();
    }

    /** Returns the story of every meter under the usual profile, as of the last change of the lab book. */
    public List<MeterStory> meters() {
        return seen.meters();
    }

    /** Returns the profile of what belongs to no mix, as of the last change of the lab book. */
    public Profile usualProfile() {
        return seen.usualProfile();
    }

    /** Returns everything known about the selected mix; empty when none is selected. */
    public Optional<Evidence> evidence() {
        return evidence;
    }

    /** Returns the selected mix. */
    public Optional<MixId> selected() {
        return evidence().map(one -> one.mix().value().id());
    }

    /** Selects a mix; one that is not in the lab book leaves none selected. What is on view stays until the mix has been read. */
    public void select(MixId mixId) {
        select(mixId, () -> {});
    }

    /**
     * Selects a mix. Of several that are selected in a row, only the last one counts.
     *
     * @param then told once it is on view
     */
    public void select(MixId mixId, Runnable then) {
        select(Optional.of(mixId), ++selections, then);
    }

    /**
     * Looks whether anybody changed the lab book before something is done that rests on it.
     *
     * @param then told once everything shows it as it is
     */
    public void renew(Runnable then) {
        select(selected, ++selections, then);
    }

    private void select(Optional<MixId> mix, int selection, Runnable then) {
        tools.tasks()
                .await(
                        texts.get("selecting", mix.map(MixId::text).orElse("")),
                        looking(mix),
                        look -> {
                            if (selection == selections && look.isOf(book())) {
                                selected = mix;
                                if (take(look)) {
                                    then.run();
                                } else {
                                    select(mix, selection, then);
                                }
                            }
                        },
                        failure -> {
                            if (selection == selections && !(failure instanceof CancellationException)) {
                                throw new IllegalStateException("selecting a mix", failure);
                            }
                        });
    }

    /** Selects nothing, as before a new mix design is saved. */
    public void selectNone() {
        selections++;
        selected = Optional.empty();
        evidence = Optional.empty();
        fire();
    }

    /** Looks whether anybody changed the lab book, or another day has begun, on which factors may be due; if so, reads it anew. */
    public void refresh() {
        refresh(failure -> {
            throw new IllegalStateException("reading the lab book anew", failure);
        });
    }

    /**
     * Looks whether anybody changed the lab book, as {@link #refresh()}.
     *
     * @param failed takes what went wrong
     */
    public void refresh(Consumer<Exception> failed) {
        if (refreshing) {
            return;
        }
        refreshing = true;
        Reading before = seen;
        Tasks.Told<Look> looking = looking(selected);
        tools.tasks()
                .workOut(
                        () -> looking.call(Progress.UNHEARD),
                        look -> {
                            refreshing = false;
                            if (look.reading() != before) {
                                take(look);
                            }
                        },
                        failure -> {
                            refreshing = false;
                            if (before.book() == book()) {
                                failed.accept(failure);
                            }
                        });
    }

    /**
     * Keeps records in the lab book in the person's name. What is typed meanwhile waits for the outcome.
     *
     * @param outcome hears how it went, after everything shows the lab book as it is then
     */
    public void keep(List<Draft> drafts, String why, Outcome outcome) {
        LabBook book = book();
        String who = person;
        Tasks.Told<Look> looking = looking(selected);
        say(texts.get("keeping"));
        tools.tasks()
                .await(
                        texts.get("keeping"),
                        progress -> Keeping.of(book.keep(drafts, who, why, progress), looking, progress),
                        kept -> {
                            say("");
                            kept.look().filter(look -> look.isOf(book())).ifPresent(this::take);
                            outcome.take(kept.refused());
                        },
                        failure -> {
                            say("");
                            outcome.fail(failure);
                        });
    }

    /** Returns what is being done that must come to its end, in words; blank while nothing is. */
    public String doing() {
        return doing;
    }

    /** Calls back when something that must come to its end begins or is over. */
    public void onDoing(Runnable listener) {
        onDoing.add(listener);
    }

    private void say(String words) {
        doing = words;
        List.copyOf(onDoing).forEach(Runnable::run);
    }

    /**
     * Returns what the lab book answers to a question, as of its last change; empty until it was looked up, of which everybody who
     * listens is told.
     */
    public <A> Optional<A> answer(Question<A> question) {
        return answers.to(question);
    }

    /** Asks the lab book once, as it is now; what is typed meanwhile waits for what follows. */
    public <A> void ask(Question<A> question, Consumer<A> then) {
        Reading of = seen;
        tools.tasks().await(texts.get("asking"), progress -> answers.lookUp(question, of), then, failure -> {
            if (!(failure instanceof CancellationException)) {
                throw new IllegalStateException("asking the lab book", failure);
            }
        });
    }

    /** Returns the names in the lab book as of its last change, as far as they were looked up. */
    public Namesakes names() {
        return names;
    }

    /** Shows everything anew with an answer that came later than its question. */
    private void heard() {
        names = answers.names();
        fire();
    }

    /** Returns the work of looking at the lab book and a mix. */
    private Tasks.Told<Look> looking(Optional<MixId> mix) {
        Reading before = seen;
        LocalDateTime now = tools.now();
        List<Question<?>> asked = answers.asked();
        return progress -> {
            synchronized (oneAtATime) {
                return Look.at(before, now, mix, asked, progress);
            }
        };
    }

    /** Shows what was found, and returns whether it did: what was read before the reading on view is not shown. */
    private boolean take(Look look) {
        Reading other = look.reading();
        if (look.isOlderThan(seen)) {
            return false;
        }
        if (other != seen) {
            seen = other;
            answers.turnTo(other, look.answers());
            names = answers.names();
        }
        if (look.mix().equals(selected)) {
            evidence = look.evidence();
        } else {
            select(selected, selections, () -> {});
        }
        fire();
        return true;
    }

    public UnitSystem units() {
        return tools.units().now();
    }

    /** Shows everything in another unit system from now on. */
    public void show(UnitSystem other) {
        tools.units().turnTo(other);
        fire();
    }

    /** Returns who works here; blank until somebody said so. Nothing can be kept before. */
    public String person() {
        return person;
    }

    public void setPerson(String name) {
        person = name.strip();
        fire();
    }

    /** Returns a part of the window that can rest; it hears of changes in the order in which the parts were asked for. */
    public Attention attention() {
        Attention part = new Attention();
        attentions.add(part);
        return part;
    }

    /** Makes something that listens as a part of the window; waking the part shows it as the desk stands. */
    public <T> T make(Attention part, Supplier<T> making) {
        Attention before = listening;
        listening = part;
        part.missed();
        try {
            return making.get();
        } finally {
            listening = before;
        }
    }

    /** Calls back after every change of anything above. */
    public void onChange(Runnable listener) {
        listening.add(listener);
    }

    private void fire() {
        List.copyOf(attentions).forEach(Attention::tell);
    }
}
