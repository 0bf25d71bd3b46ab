package porebench.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.desk.form.UnitSystem;
import porebench.method.Problem;
import porebench.record.Draft;
import porebench.record.Evidence;
import porebench.record.LabBook;
import porebench.record.LaboratoryScatter;
import porebench.record.MixId;
import porebench.record.RegisterRow;

/**
 * What the window is looking at: the lab book, the selected mix with its evidence, the unit system and the person.
 *
 * <p>Knows no Swing. Used on one thread. Every screen listens and shows itself anew when something changed; a screen with
 * an unsaved draft keeps its draft.
 */
public final class DeskModel {
    private final Tools tools;
    private final List<Runnable> listeners = new ArrayList<>();
    private LabBook book;
    private List<Evidence> everything = List.of();
    private Map<MixId, Evidence> known = Map.of();
    private List<RegisterRow> rows = List.of();
    private LaboratoryScatter scatter = LaboratoryScatter.NONE;
    private Optional<MixId> selected = Optional.empty();
    private long seenChange;
    private LocalDate seenDay;
    private UnitSystem units = UnitSystem.SI;
    private String person = "";

    public DeskModel(Tools tools, LabBook book) {
        this.tools = tools;
        this.book = book;
        this.seenDay = tools.today();
        read();
    }

    public Tools tools() {
        return tools;
    }

    /** Returns the open lab book. */
    public LabBook book() {
        return book;
    }

    /** Turns to another lab book; the one before is closed. */
    public void turnTo(LabBook other) {
        LabBook before = book;
        book = other;
        selected = Optional.empty();
        read();
        before.close();
        fire();
    }

    /** Returns one line a mix, as they stand today. */
    public List<RegisterRow> rows() {
        return rows;
    }

    /** Returns everything known about every mix, in the order of their ids. */
    public List<Evidence> everything() {
        return everything;
    }

    /** Returns how trials scatter in the laboratory, as of the last change of the lab book. */
    public LaboratoryScatter scatter() {
        return scatter;
    }

    /** Returns everything known about the selected mix; empty when none is selected. */
    public Optional<Evidence> evidence() {
        return selected.map(known::get);
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
        }
        fire();
    }

    /** Selects nothing, as before a new mix design is saved. */
    public void selectNone() {
        selected = Optional.empty();
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
        return book.changeNumber() != seenChange || !tools.today().equals(seenDay);
    }

    /**
     * Keeps records in the lab book in the person's name.
     *
     * @return why nothing was kept; empty when all was
     */
    public List<Problem> keep(List<Draft> drafts, String why) {
        List<Problem> problems = book.keep(drafts, person, why);
        read();
        fire();
        return problems;
    }

    private void read() {
        seenChange = book.changeNumber();
        seenDay = tools.today();
        List<Evidence> all = Evidence.ofAll(book);
        everything = List.copyOf(all);
        known = all.stream().collect(Collectors.toMap(one -> one.mix().value().id(), Function.identity()));
        rows = all.stream().map(one -> RegisterRow.of(one, seenDay)).toList();
        scatter = LaboratoryScatter.of(all);
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

    /** Calls back after every change of anything above. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void fire() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
