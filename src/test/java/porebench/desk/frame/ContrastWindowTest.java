package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import porebench.chart.look.ChartLook;
import porebench.desk.EventThread;
import porebench.desk.Looks;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Page;
import porebench.desk.access.Contrast;
import porebench.desk.access.PaintedText;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/**
 * What is read in either theme stands apart from what is behind it, as WCAG 2.2 asks at level AA: text 4.5 to 1, large text, edges of
 * controls, the ring around what has the keyboard and the lines and marks of charts 3 to 1. What is grey because it cannot be worked
 * with is left out, as there.
 */
@NeedsDisplay
class ContrastWindowTest {
    private static final List<String> GROUNDS = List.of(
            "Panel.background",
            "Porebench.rail",
            "Porebench.head",
            "Porebench.box",
            "Porebench.step.selected",
            "Porebench.step.hover");

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    @AfterEach
    void inTheThemeOfTheOtherTests() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
    }

    private static void judge(List<String> faults, String front, String behind, double least) {
        Color ground = UIManager.getColor(behind);
        Color colour = UIManager.getColor(front);
        assertThat(ground).as(behind).isNotNull();
        assertThat(colour).as(front).isNotNull();
        double ratio = Contrast.of(Contrast.over(colour, ground), ground);
        if (ratio < least) {
            faults.add(String.format(Locale.ROOT, "%s on %s: %.2f, not %.1f", front, behind, ratio, least));
        }
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void theColoursOfTextsStandApart(Theme theme) throws Exception {
        EventThread.run(theme::apply);
        List<String> faults = new ArrayList<>();
        List<String> texts = List.of(
                "Label.foreground",
                "Porebench.quiet",
                "Porebench.error",
                "Porebench.warning",
                "Porebench.good",
                "Porebench.state.inForce",
                "Porebench.state.recheckDue",
                "Porebench.state.lapsed",
                "Porebench.state.sourceChanged",
                "Porebench.state.evidenceChanged",
                "Porebench.state.notVerified",
                "Porebench.state.noFactor",
                "Porebench.state.withdrawn");
        for (String text : texts) {
            for (String ground : GROUNDS) {
                judge(faults, text, ground, Contrast.TEXT);
            }
            judge(faults, text, "Table.background", Contrast.TEXT);
            judge(faults, text, "Table.selectionBackground", Contrast.TEXT);
        }
        Map<String, String> pairs = new LinkedHashMap<>();
        pairs.put("Porebench.caution.foreground", "Porebench.caution.background");
        pairs.put("Porebench.training.foreground", "Porebench.training.background");
        pairs.put("Porebench.step.discText", "Porebench.step.disc");
        pairs.put("TextField.foreground", "TextField.background");
        pairs.put("TextField.placeholderForeground", "TextField.background");
        pairs.put("TextField.selectionForeground", "TextField.selectionBackground");
        pairs.put("ComboBox.foreground", "ComboBox.background");
        pairs.put("List.selectionForeground", "List.selectionBackground");
        pairs.put("Table.selectionInactiveForeground", "Table.selectionInactiveBackground");
        pairs.put("TableHeader.foreground", "TableHeader.background");
        pairs.put("MenuItem.foreground", "MenuItem.background");
        pairs.put("MenuItem.selectionForeground", "MenuItem.selectionBackground");
        pairs.put("MenuItem.acceleratorForeground", "MenuItem.background");
        pairs.put("MenuItem.acceleratorSelectionForeground", "MenuItem.selectionBackground");
        pairs.put("ToolTip.foreground", "ToolTip.background");
        pairs.put("Button.foreground", "Button.background");
        pairs.put("Button.default.foreground", "Button.default.background");
        pairs.forEach((text, ground) -> judge(faults, text, ground, Contrast.TEXT));
        judge(faults, "Porebench.training.foreground", "Porebench.training.stripe", Contrast.TEXT);
        judge(faults, "Porebench.step.discText", "Porebench.step.discDone", Contrast.TEXT);
        assertThat(faults).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void edgesOfControlsAndRingsStandApart(Theme theme) throws Exception {
        EventThread.run(theme::apply);
        List<String> faults = new ArrayList<>();
        List<String> edges = List.of(
                "Component.borderColor",
                "Component.focusedBorderColor",
                "Component.focusColor",
                "Component.error.borderColor",
                "Component.error.focusedBorderColor",
                "Component.warning.borderColor",
                "Component.warning.focusedBorderColor",
                "Button.borderColor",
                "Button.focusedBorderColor",
                "CheckBox.icon.borderColor",
                "CheckBox.icon.focusedBorderColor",
                "CheckBox.icon.selectedBorderColor");
        for (String edge : edges) {
            for (String ground : List.of("Panel.background", "Porebench.box", "Porebench.head", "Porebench.rail")) {
                judge(faults, edge, ground, Contrast.LARGE_OR_SHAPE);
            }
            judge(faults, edge, "TextField.background", Contrast.LARGE_OR_SHAPE);
        }
        judge(faults, "Button.default.borderColor", "Panel.background", Contrast.LARGE_OR_SHAPE);
        judge(faults, "CheckBox.icon.checkmarkColor", "CheckBox.icon.selectedBackground", Contrast.LARGE_OR_SHAPE);
        judge(faults, "ComboBox.buttonArrowColor", "ComboBox.background", Contrast.LARGE_OR_SHAPE);
        judge(faults, "ScrollBar.thumb", "ScrollBar.track", Contrast.LARGE_OR_SHAPE);
        judge(faults, "ProgressBar.foreground", "ProgressBar.background", Contrast.LARGE_OR_SHAPE);
        judge(faults, "Table.cellFocusColor", "Table.selectionBackground", Contrast.LARGE_OR_SHAPE);
        judge(faults, "Table.cellFocusColor", "Table.background", Contrast.LARGE_OR_SHAPE);
        judge(faults, "Component.focusedBorderColor", "Porebench.step.selected", Contrast.LARGE_OR_SHAPE);
        assertThat(faults).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void linesAndMarksOfChartsStandApart(Theme theme) throws Exception {
        EventThread.run(theme::apply);
        for (ChartLook look : List.of(EventThread.call(Looks::now), EventThread.call(Looks::onPaper))) {
            assertThat(Contrast.of(look.text(), look.background())).isGreaterThanOrEqualTo(Contrast.TEXT);
            for (Color mark : List.of(look.counted(), look.struck(), look.voided(), look.factor())) {
                assertThat(Contrast.of(mark, look.background())).isGreaterThanOrEqualTo(Contrast.LARGE_OR_SHAPE);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void everyTextOfEveryPageStandsApartAsItIsPainted(Theme theme) throws Exception {
        EventThread.run(theme::apply);
        DemoDesk demo = EventThread.call(() -> DemoDesk.filled(folder));
        WorkbenchFrame window = EventThread.call(demo::open);
        List<String> faults = new ArrayList<>();
        int looked = 0;
        EventThread.run(() -> window.openMix(new MixId("HG-103")));
        for (Page page : window.pages().all()) {
            if (page == window.pages().meter()) {
                EventThread.run(() -> window.openMeter(new MeterId("B-1")));
            } else {
                EventThread.run(() -> window.turnTo(page));
            }
            // The mixes stay the same: they are looked at once.
            Component seen = looked == 0
                    ? window.frame().getRootPane()
                    : Named.in(window.content(), Container.class, "page." + page.name());
            PaintedText painted = EventThread.call(() -> new PaintedText().in(seen));
            painted.faults().forEach(fault -> faults.add(page.name() + ": " + fault));
            looked += painted.looked();
        }
        EventThread.run(window::close);
        assertThat(faults).isEmpty();
        assertThat(looked).isGreaterThan(1_000);
    }
}
