package porebench.desk.frame;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import porebench.desk.DeskModel;
import porebench.desk.DeterminationSection;
import porebench.desk.Page;
import porebench.desk.Screen;
import porebench.desk.Settings;
import porebench.desk.budget.BudgetSection;
import porebench.desk.change.ChangeSection;
import porebench.desk.change.RiskSection;
import porebench.desk.custody.CardsPage;
import porebench.desk.factor.FactorPage;
import porebench.desk.field.FieldPage;
import porebench.desk.frame.dialog.FrameTexts;
import porebench.desk.frame.start.FirstStep;
import porebench.desk.frame.start.FirstStepsModel;
import porebench.desk.frame.start.FirstStepsPage;
import porebench.desk.hold.HoldSection;
import porebench.desk.meter.MeterPage;
import porebench.desk.mix.MixPage;
import porebench.desk.overtime.OverTimePage;
import porebench.desk.plan.PlanPage;
import porebench.desk.register.EquipmentPage;
import porebench.desk.register.GroupsPage;
import porebench.desk.register.MetersPage;
import porebench.desk.register.ProductionPage;
import porebench.desk.register.RegisterPage;
import porebench.desk.register.SourcesPage;
import porebench.desk.sample.SamplePage;
import porebench.desk.study.StudyPage;
import porebench.desk.trial.TrialsPage;
import porebench.desk.variability.VariabilityPage;
import porebench.method.Texts;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/**
 * All pages of the window: the steps of a mix in the order of the work, the registers of the laboratory, and one meter.
 *
 * <p>Each is made when it is first shown, and computes nothing while it is hidden.
 *
 * @param steps the pages of the selected mix
 * @param registers the pages of the whole laboratory
 * @param mix the first step, on which a new mix is begun
 * @param trials the step that shows one trial
 * @param readings the register of what crews read, to which a mix leads
 * @param meter the page of one meter, which the register of meters leads to
 * @param bench the way to the bench view, on which trials are made
 * @param first the list of the first steps of a lab book
 */
public record Pages(
        List<LatePage<?>> steps,
        List<LatePage<?>> registers,
        LatePage<MixPage> mix,
        LatePage<TrialsPage> trials,
        LatePage<FieldPage> readings,
        LatePage<MeterPage> meter,
        BenchDoor bench,
        LatePage<FirstStepsPage> first) {
    public Pages {
        steps = List.copyOf(steps);
        registers = List.copyOf(registers);
    }

    /**
     * Makes a place for every page; a new screen is added here.
     *
     * @param openMix turns the window to a mix
     * @param openMeter turns the window to the page of a meter
     * @param openMeters turns the window to the register of meters
     * @param openTrial turns the window to a trial
     * @param ways where the list of first steps and the import of a page lead
     * @param settings where it is remembered what a person wants to see
     */
    static Pages of(
            DeskModel desk,
            Consumer<MixId> openMix,
            Consumer<MeterId> openMeter,
            Runnable openMeters,
            Consumer<TrialId> openTrial,
            FirstStepsPage.Ways ways,
            Settings settings) {
        LatePage<MixPage> mix =
                late(desk, settings, "mix", "mix", "page.title", () -> new MixPage(desk, ways::readings));
        LatePage<FieldPage> readings = late(
                desk, settings, "readings", "field", "page.title", () -> new FieldPage(desk, openMix, ways, settings));
        AtomicReference<LatePage<TrialsPage>> made = new AtomicReference<>();
        BenchDoor bench = new BenchDoor(
                desk, () -> Objects.requireNonNull(made.get(), "trials").page().gate());
        LatePage<TrialsPage> trials =
                late(desk, settings, "trials", "trial", "page.title", () -> new TrialsPage(desk, bench::open, ways));
        made.set(trials);
        Consumer<TrialId> strikeTrial = openTrial.andThen(trial -> trials.page().strike(trial));
        return new Pages(
                List.of(
                        mix,
                        late(desk, settings, "sample", "sample", "page.title", () -> new SamplePage(desk)),
                        trials,
                        late(
                                desk,
                                settings,
                                "variability",
                                "variability",
                                "page.title",
                                () -> new VariabilityPage(
                                        desk,
                                        openTrial,
                                        strikeTrial,
                                        new ChangeSection(desk),
                                        DeterminationSection.both(
                                                new HoldSection(desk, ways::readings, ways::reading),
                                                DeterminationSection.both(
                                                        new RiskSection(desk, settings), new BudgetSection(desk))),
                                        settings)),
                        late(
                                desk,
                                settings,
                                "factor",
                                "factor",
                                "page.title",
                                () -> new FactorPage(desk, ways::openCards))),
                List.of(
                        late(
                                desk,
                                settings,
                                "sources",
                                "register",
                                "source.title",
                                () -> new SourcesPage(desk, openMix, openTrial, ways::openCards)),
                        late(desk, settings, "groups", "register", "group.title", () -> new GroupsPage(desk, openMix)),
                        late(
                                desk,
                                settings,
                                "meters",
                                "register",
                                "meter.title",
                                () -> new MetersPage(desk, openMeter, openMix)),
                        late(desk, settings, "equipment", "register", "equipment.title", () -> new EquipmentPage(desk)),
                        late(
                                desk,
                                settings,
                                "production",
                                "register",
                                "production.title",
                                () -> new ProductionPage(desk, openMix)),
                        readings,
                        late(
                                desk,
                                settings,
                                "register",
                                "register",
                                "register.title",
                                () -> new RegisterPage(desk, openMix, settings)),
                        late(desk, settings, "cards", "custody", "page.title", () -> new CardsPage(desk, openMix)),
                        late(
                                desk,
                                settings,
                                "plan",
                                "plan",
                                "page.title",
                                () -> new PlanPage(
                                        desk, of -> desk.select(of, () -> ways.go(FirstStep.TRIAL)), settings)),
                        late(
                                desk,
                                settings,
                                "overtime",
                                "overtime",
                                "page.title",
                                () -> new OverTimePage(desk, openTrial)),
                        late(desk, settings, "studies", "study", "page.title", () -> new StudyPage(desk))),
                mix,
                trials,
                readings,
                late(desk, settings, "meter", "meter", "page.title", () -> new MeterPage(desk, openMeters)),
                bench,
                late(
                        desk,
                        settings,
                        "firstSteps",
                        "frame",
                        "welcome.title",
                        () -> new FirstStepsPage(
                                new FirstStepsModel(desk, settings),
                                FrameTexts.in(desk.tools().locale()),
                                ways)));
    }

    /** Makes a place for a page, its title said before it is there. */
    private static <P extends Screen> LatePage<P> late(
            DeskModel desk, Settings settings, String name, String room, String titleKey, Supplier<P> maker) {
        String bundle = "porebench.desk." + room + "." + room;
        return new LatePage<>(
                desk, name, Texts.of(bundle, desk.tools().locale()).get(titleKey), maker, settings);
    }

    /** Returns all pages. */
    List<LatePage<?>> all() {
        return Stream.of(steps, registers, List.<LatePage<?>>of(meter, first))
                .flatMap(List::stream)
                .toList();
    }

    /**
     * Lets all pages rest but the one that is shown, which is made if it was not.
     *
     * @param mix the mix it shows; empty for a register
     */
    void show(Page shown, Optional<MixId> mix) {
        for (LatePage<?> page : all()) {
            if (page == shown) {
                page.page();
                page.turnTo(mix);
            } else {
                page.rest();
            }
        }
    }

    Optional<LatePage<?>> named(String name) {
        return all().stream().filter(page -> page.name().equals(name)).findFirst();
    }

    /** Returns the register that leads to a page; the page itself when it is one. */
    Page registerOf(Page page) {
        return page == meter ? named("meters").<Page>map(register -> register).orElse(page) : page;
    }

    boolean isStep(Page page) {
        return steps.contains(page);
    }
}
