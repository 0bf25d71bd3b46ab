package porebench.desk.frame;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.desk.Settings;
import porebench.desk.budget.BudgetSection;
import porebench.desk.factor.FactorPage;
import porebench.desk.meter.MeterPage;
import porebench.desk.mix.MixPage;
import porebench.desk.overtime.OverTimePage;
import porebench.desk.register.EquipmentPage;
import porebench.desk.register.MetersPage;
import porebench.desk.register.RegisterPage;
import porebench.desk.register.SourcesPage;
import porebench.desk.sample.SamplePage;
import porebench.desk.study.StudyPage;
import porebench.desk.trial.TrialsPage;
import porebench.desk.variability.ToTrial;
import porebench.desk.variability.VariabilityPage;
import porebench.record.MeterId;
import porebench.record.MixId;
import porebench.record.TrialId;

/**
 * All pages of the window: the steps of a mix in the order of the work, the registers of the laboratory, and one meter.
 *
 * @param steps the pages of the selected mix
 * @param registers the pages of the whole laboratory
 * @param trials the step that shows one trial
 * @param meter the page of one meter, which the register of meters leads to
 * @param beginMix begins the draft of a new mix on the first step
 */
record Pages(List<Page> steps, List<Page> registers, TrialsPage trials, MeterPage meter, Runnable beginMix) {
    Pages {
        steps = List.copyOf(steps);
        registers = List.copyOf(registers);
    }

    /**
     * Makes all pages; a new screen is added here.
     *
     * @param openMix turns the window to a mix
     * @param openMeter turns the window to the page of a meter
     * @param openMeters turns the window to the register of meters
     * @param openTrial turns the window to a trial
     * @param settings where it is remembered what a person wants to see
     */
    static Pages of(
            DeskModel desk,
            Consumer<MixId> openMix,
            Consumer<MeterId> openMeter,
            Runnable openMeters,
            Consumer<TrialId> openTrial,
            Settings settings) {
        MixPage mix = new MixPage(desk);
        TrialsPage trials = new TrialsPage(desk);
        return new Pages(
                List.of(
                        mix,
                        new SamplePage(desk),
                        trials,
                        new VariabilityPage(
                                desk,
                                new ToTrial(openTrial, openTrial.andThen(trials::strike)),
                                new BudgetSection(desk),
                                settings),
                        new FactorPage(desk)),
                List.of(
                        new SourcesPage(desk),
                        new MetersPage(desk, openMeter),
                        new EquipmentPage(desk),
                        new RegisterPage(desk, openMix),
                        new OverTimePage(desk, openTrial),
                        new StudyPage(desk)),
                trials,
                new MeterPage(desk, openMeters),
                mix::begin);
    }

    /** Returns all pages. */
    List<Page> all() {
        return Stream.of(steps, registers, List.<Page>of(meter))
                .flatMap(List::stream)
                .toList();
    }

    Optional<Page> named(String name) {
        return all().stream().filter(page -> page.name().equals(name)).findFirst();
    }

    /** Returns the register that leads to a page; the page itself when it is one. */
    Page registerOf(Page page) {
        return page == meter ? named("meters").orElse(page) : page;
    }

    boolean isStep(Page page) {
        return steps.contains(page);
    }
}
