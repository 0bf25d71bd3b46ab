package porebench.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import porebench.desk.form.UnitSystem;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryEquipment;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.MeterStory;
import porebench.evidence.RegisterRow;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.record.Draft;
import porebench.record.LabBook;
import porebench.record.Laboratory;
import porebench.record.Namesakes;
import porebench.record.id.MixId;

/**
 * What the window is looking at: the lab book, the selected mix with its evidence, the unit system and the person.
 *
 * <p>Knows no Swing. Used on one thread. Every screen listens and shows itself anew when something changed; a screen with
 * an unsaved draft keeps its draft.
 */
public final class DeskModel {
    private final Tools tools;
    private final List<Attention> attentions = new ArrayList<>();
    private Attention listening = attention();
    private Reading seen;
    private Namesakes names;
    private Optional<MixId> selected = Optional.empty();
    private Optional<Evidence> evidence = Optional.empty();
    private UnitSystem units = UnitSystem.SI;
    private String person = "";

    /** Makes a desk on which no lab book lies yet. */
    public DeskModel(Tools tools) {
        this(tools, new NoBook());
    }

    public DeskModel(Tools tools, LabBook book) {
        this.tools = tools;
        this.seen = Reading.of(book, tools.today());
        this.names = new Namesakes(book);
        remember(seen);
    }

    public Tools tools() {
        return tools;
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
        selected = Optional.empty();
        remember(other);
        fire();
        return before;
    }

    /** Turns away from the lab book, so that none is open; returns it, which is to be closed. */
    public LabBook turnAway() {
        return turnTo(Reading.of(new NoBook(), tools.today()));
    }

    /** Returns whose lab book it is; empty while nobody said so. */
    public Optional<Laboratory> laboratory() {
        return seen.laboratory();
    }

    /** Returns whether it is a training book: nothing in it was measured, and everything shown of it says so. */
    public boolean isTraining() {
        return seen.laboratory().map(Laboratory::training).orElse(false);
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
        return seen.standing().scatter();
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

    /** Selects a mix; one that is not in the lab book leaves none selected. */
    public void select(MixId mixId) {
        selected = Optional.of(mixId);
        if (isOutOfDate()) {
            read();
        } else {
            look();
        }
        fire();
    }

    /** Selects nothing, as before a new mix design is saved. */
    public void selectNone() {
        selected = Optional.empty();
        look();
        fire();
    }

    /** Reads the lab book anew if anybody changed it since, or another day has begun, on which factors may be due. */
    public void refresh() {
        if (isOutOfDate()) {
            read();
            fire();
        }
    }

    private boolean isOutOfDate() {
        return book().changeNumber() != seen.standing().upTo() || !tools.today().equals(seen.day());
    }

    /**
     * Keeps records in the lab book in the person's name.
     *
     * @return why nothing was kept; empty when all was
     */
    public List<Problem> keep(List<Draft> drafts, String why) {
        List<Problem> problems = book().keep(drafts, person, why);
        read();
        fire();
        return problems;
    }

    /** Returns the names in the lab book as of its last change, each looked up once, when it is first asked for. */
    public Namesakes names() {
        return names;
    }

    private void read() {
        remember(seen.renewed(tools.today()));
    }

    private void remember(Reading reading) {
        seen = reading;
        names = new Namesakes(reading.book());
        look();
    }

    /** Reads what is known about the selected mix. */
    private void look() {
        evidence = selected.flatMap(seen.standing()::evidence);
    }

    public UnitSystem units() {
        return units;
    }

    /** Shows everything in another unit system from now on. */
    public void show(UnitSystem other) {
        units = other;
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
