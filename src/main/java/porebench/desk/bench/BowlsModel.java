package porebench.desk.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.desk.Bowl;
import porebench.desk.Bowls;
import porebench.desk.DeskModel;
import porebench.desk.form.TypedDraft;
import porebench.desk.trial.TrialGate;
import porebench.evidence.paper.SheetCode;
import porebench.method.Role;
import porebench.method.Texts;
import porebench.method.trial.TrialFactor;
import porebench.record.column.TrialColumns;
import porebench.record.id.MixId;

/**
 * The bench view without its window: the bowls on the bench, the one looked at, and what the keys do to it.
 *
 * <p>Every key is kept at once outside the lab book, so that a bowl stands where it was left whatever ends the program. A soak ends
 * by the clock, reckoned from the moment at which it began.
 */
final class BowlsModel {
    private static final double ONE_HALF = 0.5;

    private final DeskModel desk;
    private final TrialGate gate;
    private final Texts texts;
    private final Bowls bowls;
    private final BowlSteps steps;
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<Integer> number = Optional.empty();
    private Optional<TypedDraft> taken = Optional.empty();
    private Optional<SavedTrial> saved = Optional.empty();
    private String message = "";
    private String before = "";
    private boolean isAlarm;
    private boolean isArmed;
    private boolean isFresh = true;

    BowlsModel(DeskModel desk, TrialGate gate) {
        this.desk = desk;
        this.gate = gate;
        this.texts = Texts.of("porebench.desk.bench.bench", desk.tools().locale());
        this.bowls = new Bowls(desk);
        this.steps = new BowlSteps(this);
        desk.onChange(this::follow);
    }

    DeskModel desk() {
        return desk;
    }

    Texts texts() {
        return texts;
    }

    TrialGate gate() {
        return gate;
    }

    Bowls bowls() {
        return bowls;
    }

    /** Returns the bowl looked at; empty while there is none, and just after its trial was kept. */
    Optional<Bowl> current() {
        return number.flatMap(bowls::find);
    }

    /** Returns the trial kept last, while nothing was done since. */
    Optional<SavedTrial> saved() {
        return saved;
    }

    BenchStep step() {
        return current().map(bowl -> BenchStep.of(bowl.step())).orElse(BenchStep.METER);
    }

    /** Returns whether the mix of the bowl looked at is the one on the desk, so that it can be judged. */
    boolean isReady() {
        return current()
                .filter(bowl -> desk.selected().filter(bowl.mix()::equals).isPresent())
                .isPresent();
    }

    String message() {
        return message;
    }

    boolean isAlarm() {
        return isAlarm;
    }

    /** Returns what was read at the step before, read back with its limits. */
    String before() {
        return before;
    }

    /** Comes to the bench: to a bowl of the mix on the desk, to any bowl where it has none, or to a new one. */
    void open() {
        saved = Optional.empty();
        List<Bowl> all = bowls.all();
        Optional<Bowl> first = all.stream()
                .filter(bowl -> desk.selected().filter(bowl.mix()::equals).isPresent())
                .findFirst()
                .or(() -> desk.selected().isPresent()
                        ? Optional.empty()
                        : all.stream().findFirst());
        first.ifPresentOrElse(bowl -> turnTo(bowl.number()), this::begin);
    }

    /** Begins a new bowl of the mix on the desk. */
    void begin() {
        begin(bowls.freeNumber());
    }

    private void begin(int free) {
        Optional<MixId> mix = desk.selected();
        saved = Optional.empty();
        if (mix.isEmpty() || !gate.isOpen()) {
            number = Optional.empty();
            say(texts.get(mix.isEmpty() ? "no-mix" : "closed"), true);
            return;
        }
        Bowl bowl = new Bowl(
                mix.get(), free, BenchStep.METER.symbol(), gate.fresh(), "", Optional.empty(), Optional.empty());
        bowls.keep(bowl);
        number = Optional.of(free);
        arrive("");
    }

    /** Looks at a bowl, whose mix comes onto the desk with it. */
    void turnTo(int other) {
        saved = Optional.empty();
        bowls.find(other).ifPresent(bowl -> {
            number = Optional.of(other);
            arrive("");
            if (!isReady()) {
                desk.select(bowl.mix(), () -> arrive(""));
            }
        });
    }

    /** Looks at the next bowl on the bench, after the last at the first. */
    void turnToNext() {
        List<Bowl> all = bowls.all();
        int at = number.orElse(0);
        all.stream()
                .filter(bowl -> bowl.number() > at)
                .findFirst()
                .or(() -> all.stream().findFirst())
                .ifPresentOrElse(bowl -> turnTo(bowl.number()), this::begin);
    }

    /** Takes the bowl looked at off the bench, with what was read in it. */
    void giveUp() {
        current().ifPresent(bowls::drop);
        number = Optional.empty();
        if (bowls.all().isEmpty()) {
            arrive("");
        } else {
            turnToNext();
        }
    }

    private void follow() {
        taken = Optional.empty();
        judge();
        fire();
    }

    /** Stands at a step as it was left: what was typed there before can be kept by Enter or typed over. */
    void arrive(String readBack) {
        before = readBack;
        isFresh = true;
        isArmed = false;
        message = "";
        isAlarm = false;
        taken = Optional.empty();
        judge();
        fire();
    }

    void say(String words, boolean alarm) {
        message = words;
        isAlarm = alarm;
        fire();
    }

    /** Waits for a number that takes the place of the one typed, or for Enter once more where that takes it as it is. */
    void ask(String words, boolean takesEnter) {
        isFresh = true;
        isArmed = takesEnter;
        say(words, true);
    }

    /** Returns whether Enter now takes what was asked about. */
    boolean isAskedTwice() {
        return isArmed;
    }

    /** Returns a draft under the next name that is free: other bowls may have had their trials kept meanwhile. */
    TypedDraft named(TypedDraft draft) {
        return draft.with(TrialColumns.ID, gate.fresh().text(TrialColumns.ID));
    }

    /** Judges a draft of the bowl looked at before it is kept with it. */
    void judge(TypedDraft draft) {
        gate.take(draft);
        taken = Optional.empty();
    }

    /** Lets the gate judge the bowl looked at as it stands, unless it did so already. */
    private void judge() {
        Optional<TypedDraft> draft = current().map(Bowl::draft).filter(any -> isReady());
        if (draft.isPresent() && !draft.equals(taken)) {
            taken = draft;
            gate.take(step() == BenchStep.RESULT ? named(draft.get()) : draft.get());
        }
    }

    void keep(Bowl bowl) {
        bowls.keep(bowl);
        judge();
    }

    /** Takes a digit, or the decimal sign in either writing. */
    void type(char sign) {
        Optional<Bowl> bowl = current();
        if (bowl.isEmpty() || !takesDigits()) {
            say(texts.get("no-number-here"), false);
            return;
        }
        String written = sign == '.' || sign == ',' ? decimalSign() : String.valueOf(sign);
        String typed = (isFresh ? "" : bowl.get().typed()) + written;
        isFresh = false;
        isArmed = false;
        message = "";
        isAlarm = false;
        keep(bowl.get().typing(typed));
        fire();
    }

    /** Returns the decimal sign of the person's language. */
    String decimalSign() {
        return desk.tools().numbers().show(ONE_HALF, 1).substring(1, 2);
    }

    /** Returns whether a number is read or chosen at the step. */
    private boolean takesDigits() {
        BenchStep step = step();
        return step.column().isPresent() || step == BenchStep.METER || step == BenchStep.RESULT;
    }

    /** Says that a key does nothing, so that nobody believes it was taken. */
    void unknownKey() {
        say(texts.get("no-key"), false);
    }

    /** Takes what a reader of codes read from the sheet of a mix: turns to its bowl, or begins one. */
    void scan(String code) {
        Optional<MixId> mix = SheetCode.mix(code);
        if (mix.isEmpty() || desk.rows().stream().noneMatch(row -> row.mixId().equals(mix.get()))) {
            say(texts.get("no-such-code", code), true);
            return;
        }
        bowls.all().stream()
                .filter(bowl -> bowl.mix().equals(mix.get()))
                .findFirst()
                .ifPresentOrElse(bowl -> turnTo(bowl.number()), () -> desk.select(mix.get(), this::begin));
    }

    /**
     * Stands as typed at the step what came another way; Enter then takes it. A balance that sends one mass all the time changes
     * nothing: what is asked about it stays asked.
     */
    void fill(String typed, String words) {
        Bowl bowl = current().orElseThrow();
        if (isArmed && bowl.typed().equals(typed)) {
            return;
        }
        isFresh = true;
        keep(bowl.typing(typed));
        tell(words, false);
    }

    /** Takes back what is being typed at the step. */
    void wipe() {
        isFresh = true;
        current().ifPresent(bowl -> keep(bowl.typing("")));
    }

    /** Says what came another way than by a key; what was asked before is no longer answered by Enter. */
    void tell(String words, boolean alarm) {
        isArmed = false;
        say(words, alarm);
    }

    /** Takes back the last digit; where none is left, goes to the step before. */
    void erase() {
        Optional<Bowl> bowl = current();
        String typed = bowl.map(Bowl::typed).orElse("");
        if (typed.isEmpty() || !takesDigits()) {
            back();
        } else {
            isFresh = false;
            isArmed = false;
            keep(bowl.orElseThrow().typing(typed.substring(0, typed.length() - 1)));
            say("", false);
        }
    }

    /** Goes to the step before; what was read stays. */
    void back() {
        if (isReady()) {
            go(current().orElseThrow(), step().before(gate.type()), "");
            if (isNothingToWeigh(step())) {
                back();
            }
        }
    }

    void goOn(Bowl bowl, String readBack) {
        go(bowl, step().after(gate.type()), readBack);
        if (isNothingToWeigh(step())) {
            goOn(current().orElseThrow(), readBack);
        }
    }

    void go(Bowl bowl, BenchStep step, String readBack) {
        Bowl there = bowl.at(step.symbol())
                .typing(step.column().map(bowl.draft()::text).orElse(""));
        if (step == BenchStep.SOAK && there.soakFrom().isEmpty()) {
            there = there.soaking(now(), gate.soakMinutes());
        }
        keep(there);
        arrive(readBack);
    }

    Instant now() {
        return desk.tools().clock().instant();
    }

    /** Returns whether a step weighs an aggregate that the mix has none of. */
    private boolean isNothingToWeigh(BenchStep step) {
        Optional<Role> role = step.role();
        return role.isPresent()
                && gate.weighOut()
                        .filter(list -> list.lines().stream()
                                .noneMatch(line ->
                                        line.role() == role.get() && line.each().kilograms() > 0))
                        .isPresent();
    }

    /** Goes on: takes what was typed, or says why it cannot. */
    void enter() {
        if (saved.isPresent()) {
            begin(saved.get().number());
        } else if (current().isEmpty()) {
            begin();
        } else if (isReady()) {
            steps.enter(current().orElseThrow(), step());
        }
    }

    /** Notes that a trial was kept and takes its bowl off the bench. */
    void kept(Bowl bowl, SavedTrial done) {
        bowls.drop(bowl);
        saved = Optional.of(done);
        arrive("");
    }

    /** Returns the factor of the bowl looked at; empty while anything measured is missing. */
    Optional<TrialFactor> figures() {
        return isReady() ? gate.figures() : Optional.empty();
    }

    /** Returns whether the soak of any bowl is over and nobody ended it. */
    boolean rings() {
        return bowls.all().stream().anyMatch(bowls::rings);
    }

    /** Calls back after every change. */
    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void fire() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
