package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Robot;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Page;
import porebench.desk.Refused;
import porebench.desk.form.CutTexts;
import porebench.desk.form.UnitSystem;
import porebench.record.Kept;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.Source;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** Every page in the smallest window, with names as long as they may be: nothing is cut off without a way to it. */
@NeedsDisplay
class RoomWindowTest {
    private static final MixId MIX = new MixId("HG-101");
    private static final String LONG =
            "Viaduct deck, second stage, north carriageway, pumped mix with the long name 80.";

    private static final Pattern SI = Pattern.compile("\\d ?(L|kPa|C|\u00b0C|kg|g|mm|m|m3|kg/m3)(?![\\w/])");

    private static final Pattern OWN_UNIT = Pattern.compile(
            "37\\.5 mm|(granite|gravel|limestone) \\d+ mm|mm (granite|basalt)|to 63 mm|lb\\)|^w [\\d.]+ kg");

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private DemoDesk demo;
    private WorkbenchFrame window;

    private void open(String language) throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        demo = EventThread.call(() -> DemoDesk.filled(folder, Locale.forLanguageTag(language)));
        List<Draft> drafts = DemoDesk.aside(() -> longNames(demo.desk.book()));
        EventThread.run(() -> demo.desk.setPerson(LONG));
        assertThat(EventThread.call(() -> Refused.by(out -> demo.desk.keep(drafts, LONG, out))))
                .isEmpty();
        demo.memory.remember(new Dimension(1024, 700));
        window = EventThread.call(() -> demo.open());
        EventThread.run(() -> window.openMix(MIX));
    }

    private static List<Draft> longNames(LabBook book) {
        Version<MixDesign> mix = book.latest(MixDesign.class, MIX.text()).orElseThrow();
        Version<Source> source = book.latest(Source.class, "S-01").orElseThrow();
        Version<Meter> meter = book.latest(Meter.class, "B-1").orElseThrow();
        MixDesign was = mix.value();
        Source stone = source.value();
        Meter dial = meter.value();
        return List.of(
                corrected(
                        mix,
                        new MixDesign(
                                MIX,
                                LONG,
                                was.batch(),
                                was.soakMinutes(),
                                was.airTolerancePercent(),
                                was.profileId(),
                                LONG,
                                Optional.empty())),
                corrected(
                        source,
                        new Source(
                                stone.id(),
                                LONG,
                                stone.role(),
                                LONG,
                                LONG,
                                stone.relativeDensity(),
                                stone.absorptionPercent(),
                                LONG)),
                corrected(
                        meter,
                        new Meter(
                                dial.id(),
                                dial.type(),
                                LONG,
                                dial.bowl(),
                                dial.divisionPercent(),
                                dial.scaleTopPercent(),
                                dial.inService(),
                                LONG)));
    }

    private static <T extends Kept> Draft corrected(Version<T> version, T other) {
        return Draft.correcting(version, other);
    }

    /**
     * All pages of the demo laboratory, which keeps everything in SI units, on a US screen. In their own unit stay the names of stones
     * and of the sieve, what stands on an instrument's certificate, and what a calibration read as it was measured.
     */
    @Test
    void aUsScreenShowsNothingInSiUnits() throws Exception {
        open("en-US");
        Keys.bringTo(() -> Named.in(window.content(), JList.class, "mixes"));
        MenuKeys.choose(window, 2, KeyEvent.VK_U);
        assertThat(EventThread.comes(() -> window.desk().units() == UnitSystem.US))
                .isTrue();
        List<String> faults = new ArrayList<>();
        for (Page page : window.pages().all()) {
            EventThread.run(() -> window.turnTo(page));
            EventThread.settle();
            EventThread.call(() -> Written.on((Container) page.component())).stream()
                    .filter(text ->
                            SI.matcher(text).find() && !OWN_UNIT.matcher(text).find())
                    .forEach(text -> faults.add(page.name() + ": " + text));
        }
        faults.removeIf(fault -> fault.startsWith("equipment: "));
        assertThat(faults).isEmpty();
    }

    /**
     * All pages of the demo laboratory: a number has one decimal sign and no more decimals than a dial or a balance gives, a day is
     * written in one way. Names of stones and of instruments stay as somebody typed them.
     */
    @ParameterizedTest
    @CsvSource({"es-ES,.", "es-MX,','", "en,','"})
    void everyPageWritesNumbersAndDaysInOneWay(String language, String otherSign) throws Exception {
        open(language);
        Pattern otherNumber = Pattern.compile("(?<![\\d.,])\\d+[" + otherSign + "]\\d+(?![\\d.,])");
        Pattern tooFine =
                Pattern.compile("[1-9]\\d*[.,]\\d{5,}|[1-9]\\d*[.,]\\d{4,}[ \\u00a0\\u202f]?%|[.,]0*[1-9]\\d{4,}");
        Pattern otherDay = Pattern.compile("\\b\\d{1,2}[/.-]\\d{1,2}[/.-]\\d{2,4}\\b|\\b20\\d\\d[/.]\\d");
        List<String> faults = new ArrayList<>();
        List<String> seen = new ArrayList<>();
        for (Page page : window.pages().all()) {
            EventThread.run(() -> window.turnTo(page));
            EventThread.settle();
            List<String> texts = EventThread.call(() -> Written.on((Container) page.component()));
            seen.addAll(texts);
            texts.stream()
                    .filter(text -> otherNumber.matcher(text).find()
                            || tooFine.matcher(text).find()
                            || otherDay.matcher(text).find())
                    .forEach(text -> faults.add(page.name() + ": " + text));
        }
        assertThat(faults).isEmpty();
        assertThat(seen).anyMatch(text -> text.contains("2026-"));
    }

    private void pointedAtAFieldSaysAllThatStandsInIt() throws Exception {
        Page mix = window.pages().named("mix").orElseThrow();
        EventThread.run(() -> window.turnTo(mix));
        EventThread.settle();
        JTextField title = Named.in(mix.component(), JTextField.class, "title");
        assertThat(EventThread.call(() -> title.getToolTipText())).isNull();
        Robot mouse = new Robot();
        Point place = EventThread.call(() -> title.getLocationOnScreen());
        mouse.mouseMove(place.x + 20, place.y + 8);
        mouse.mouseMove(place.x + 24, place.y + 10);
        assertThat(EventThread.comes(() -> LONG.equals(title.getToolTipText()))).isTrue();
    }

    private List<String> cutTitles() {
        return window.pages().steps().stream()
                .map(step -> Named.in(window.content(), JToggleButton.class, "step." + step.name()))
                .flatMap(button -> Arrays.stream(button.getComponents()))
                .filter(JLabel.class::isInstance)
                .map(JLabel.class::cast)
                .filter(label -> window.pages().steps().stream()
                        .anyMatch(step -> step.title().equals(label.getText())))
                .flatMap(label -> CutTexts.of(label).stream())
                .toList();
    }

    @AfterEach
    void closeWindow() throws Exception {
        EventThread.run(() -> window.pages().all().forEach(Page::dropDraft));
        EventThread.run(window::close);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es-MX"})
    void nothingIsCutOffWithoutAWayToIt(String language) throws Exception {
        open(language);
        assertThat(LONG).hasSize(80);
        List<String> faults = new ArrayList<>();
        for (Page page : window.pages().all()) {
            EventThread.run(() -> window.turnTo(page));
            EventThread.settle();
            EventThread.settle();
            faults.addAll(EventThread.call(() -> Room.lackingIn(window.frame().getRootPane())).stream()
                    .map(fault -> page.name() + ": " + fault)
                    .toList());
        }
        assertThat(faults).isEmpty();
        assertThat(EventThread.call(() -> cutTitles())).isEmpty();
        pointedAtAFieldSaysAllThatStandsInIt();
    }
}
