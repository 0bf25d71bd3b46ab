package porebench.desk.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.chart.factor.CoverageOverTime;
import porebench.desk.CardsNow;
import porebench.desk.DeskModel;
import porebench.desk.HoldsNow;
import porebench.desk.Settings;
import porebench.desk.form.Numbers;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.custody.CardAlarms;
import porebench.evidence.hold.HoldRemark;
import porebench.evidence.hold.LaboratoryHolds;
import porebench.evidence.paper.RegisterList;
import porebench.method.Answer;
import porebench.method.Digits;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.chain.Head;
import porebench.record.id.MixId;

/** The factor register: every mix in service, those that are wanted, how many are covered, and the views that a person keeps. */
final class RegisterModel {
    private static final String VIEWS = "register.views";
    private static final String OVER_TIME = "register.over-time";
    private static final String HIDDEN = "hidden";

    private final DeskModel desk;
    private final Texts texts;
    private final Settings settings;
    private Wanted wanted = Wanted.ALL;
    private Optional<MixId> chosen = Optional.empty();

    RegisterModel(DeskModel desk, Texts texts, Settings settings) {
        this.desk = desk;
        this.texts = texts;
        this.settings = settings;
    }

    Texts texts() {
        return texts;
    }

    Wanted wanted() {
        return wanted;
    }

    void want(Wanted which) {
        wanted = which;
    }

    /**
     * Returns the lines on view; one with cards that are to come back, or whose factor is to be
     * checked again by its field readings, says so first.
     */
    List<RegisterRow> rows() {
        Wanted.Known known = new Wanted.Known(alarms(), holds());
        return known.alarms()
                .marked(known.holds()
                        .marked(desk.rows().stream()
                                .filter(row -> wanted.holds(row, known))
                                .toList()));
    }

    /** Returns the cards that are out on a factor that no longer holds; none until they were looked up. */
    CardAlarms alarms() {
        return desk.answer(new CardsNow()).map(CardsNow.Found::alarms).orElse(CardAlarms.NONE);
    }

    private LaboratoryHolds holds() {
        return desk.answer(new HoldsNow()).orElse(LaboratoryHolds.NONE);
    }

    /** Says by how much field readings and densities of a mix part, and how sure that is; nothing where they do not. */
    String recheckWords(RegisterRow row) {
        Numbers numbers = desk.tools().numbers();
        return holds().of(row.mixId())
                .map(HoldRemark::shift)
                .map(shift -> texts.get(
                        "register.recheck-g.by",
                        numbers.show(shift.percent(), Digits.AIR),
                        numbers.show(shift.low(), Digits.AIR),
                        numbers.show(shift.high(), Digits.AIR)))
                .orElse("");
    }

    /** Returns by how much they part to either side, in % air; -1 where they do not. */
    double recheckSize(RegisterRow row) {
        return holds().of(row.mixId())
                .map(remark -> Math.abs(remark.shift().percent()))
                .orElse(-1.0);
    }

    /** Says how many cards are to come back, of how many mixes; nothing where none is. */
    String alarmWords() {
        CardAlarms now = alarms();
        return now.cards() == 0
                ? ""
                : texts.get("register.alarm", Integer.toString(now.cards()), Integer.toString(now.mixes()));
    }

    /** Says of a mix how many of its cards are to come back; nothing where none is. */
    String cardWords(RegisterRow row) {
        int cards = cardsBack(row);
        return cards == 0 ? "" : texts.get("register.cards.back", Integer.toString(cards));
    }

    /** Returns how many cards of a mix are to come back. */
    int cardsBack(RegisterRow row) {
        return alarms().of(row.mixId()).size();
    }

    void choose(MixId mixId) {
        chosen = Optional.of(mixId);
    }

    /** Returns the chosen line, or the first one while the chosen one is not on view. */
    Optional<RegisterRow> chosen() {
        return rows().stream()
                .filter(row -> chosen.filter(row.mixId()::equals).isPresent())
                .findFirst()
                .or(() -> rows().stream().findFirst());
    }

    String stateWords(FactorState state) {
        return texts.get("state." + state.symbol().replace(' ', '-'));
    }

    /** Returns how many mixes are covered, in words; nothing while there is no mix. */
    String coverageWords() {
        List<RegisterRow> all = desk.rows();
        int covered = RegisterRow.covered(all);
        return all.isEmpty()
                ? ""
                : texts.get(
                        "register.coverage",
                        Integer.toString(covered),
                        Integer.toString(all.size()),
                        Integer.toString(wholePercent(covered, all.size())));
    }

    /** Returns a share in whole %, never more than it is: 100 % means all. */
    private static int wholePercent(int covered, int all) {
        return (int) (100L * covered / all);
    }

    /** Returns how many mixes there are in each state, in words. */
    String summary() {
        List<RegisterRow> all = desk.rows();
        String states = Arrays.stream(FactorState.values())
                .filter(state -> all.stream().anyMatch(row -> row.state() == state))
                .map(state -> texts.get(
                        "register.count",
                        Long.toString(
                                all.stream().filter(row -> row.state() == state).count()),
                        stateWords(state)))
                .collect(Collectors.joining(", "));
        return all.isEmpty()
                ? texts.get("register.empty")
                : texts.get("register.summary", Integer.toString(all.size()), states);
    }

    /** Returns what is missing for a mix, as sentences. */
    String missingWords(RegisterRow row) {
        return row.missing().isEmpty()
                ? texts.get("register.complete")
                : row.missing().stream().map(desk.tools().problemText()::say).collect(Collectors.joining("  "));
    }

    /** Returns why a mix is to be checked again, as sentences; empty where it is not. */
    String dueWords(RegisterRow row) {
        return row.due().stream().map(desk.tools().problemText()::say).collect(Collectors.joining("  "));
    }

    /** Returns how many mixes were covered over time; empty while there is no mix. */
    Optional<CoverageOverTime> overTime() {
        LocalDate today = desk.tools().today();
        List<CoverageOverTime.Step> steps = new ArrayList<>();
        desk.standing().coverage().days().stream()
                .filter(day -> day.from().isBefore(today))
                .forEach(day -> steps.add(new CoverageOverTime.Step(day.from(), day.mixes(), day.covered())));
        // Of today the states count, by which a crew may use a factor or not.
        List<RegisterRow> all = desk.rows();
        steps.add(new CoverageOverTime.Step(today, all.size(), RegisterRow.covered(all)));
        return all.isEmpty() ? Optional.empty() : Optional.of(new CoverageOverTime(steps, today));
    }

    /**
     * Returns the register as it is printed.
     *
     * @param shown the lines that are printed, in their order
     * @param alarms the cards that are to come back, as the lab book says now
     */
    RegisterList list(List<RegisterRow> shown, CardAlarms alarms, Head head) {
        return RegisterList.of(
                desk.laboratory(),
                desk.tools().now(),
                desk.rows(),
                unmarked(shown),
                alarms,
                desk.tools().problemText(),
                head);
    }

    /** Returns lines on view as they are without what is said of their cards, which the list says itself. */
    private List<RegisterRow> unmarked(List<RegisterRow> shown) {
        Map<MixId, RegisterRow> plain = desk.rows().stream().collect(Collectors.toMap(RegisterRow::mixId, row -> row));
        return shown.stream().map(row -> plain.getOrDefault(row.mixId(), row)).toList();
    }

    /** Returns the name of a file for the register, without its ending. */
    String fileName() {
        return texts.get("register.file", desk.tools().today().toString());
    }

    /** Returns whether the person wants to see how many mixes were covered over time. */
    boolean showsOverTime() {
        return !settings.get(OVER_TIME, "").equals(HIDDEN);
    }

    void showOverTime(boolean isWanted) {
        settings.put(OVER_TIME, isWanted ? "" : HIDDEN);
    }

    /** Returns the views that the person keeps. */
    List<RegisterView> views() {
        return RegisterView.read(settings.get(VIEWS, ""));
    }

    /** Keeps a view, in the place of one of the same name, and returns it as it is kept; or why it is not. */
    Answer<RegisterView> keep(RegisterView view) {
        String name = RegisterView.plain(view.name());
        List<RegisterView> kept = new ArrayList<>(views());
        kept.removeIf(one -> one.name().equalsIgnoreCase(name));
        if (name.isEmpty()) {
            return Answer.refused(List.of(Problem.missing("view", "view")));
        }
        if (name.length() > RegisterView.LONGEST_NAME) {
            return Answer.refused(
                    List.of(Problem.error("view", "register.view-name-long", name, RegisterView.LONGEST_NAME)));
        }
        if (view.sought().length() > RegisterView.LONGEST_SOUGHT) {
            return Answer.refused(
                    List.of(Problem.error("view", "register.view-words-long", RegisterView.LONGEST_SOUGHT)));
        }
        if (kept.size() >= RegisterView.MOST) {
            return Answer.refused(List.of(Problem.error("view", "register.views-full", RegisterView.MOST)));
        }
        RegisterView made = new RegisterView(name, view.wanted(), RegisterView.plain(view.sought()), view.order());
        kept.add(made);
        settings.put(VIEWS, RegisterView.text(kept));
        return Answer.of(made, List.of());
    }

    /** Forgets a view. */
    void forget(String name) {
        settings.put(
                VIEWS,
                RegisterView.text(
                        views().stream().filter(one -> !one.name().equals(name)).toList()));
    }
}
