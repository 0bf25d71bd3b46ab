package porebench.desk.frame;

import java.awt.Dimension;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JTextField;
import porebench.desk.EventThread;
import porebench.desk.Named;
import porebench.desk.Shots;
import porebench.quantity.DensityUnit;
import porebench.quantity.Typed;
import porebench.record.FieldReading;
import porebench.record.book.Draft;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.ReadingId;

/**
 * Saves pictures of the page of field readings on the demo lab book with some readings more, for people to look at.
 *
 * <p>Arguments: the folder for the pictures, light or dark, width, height. The window speaks the language of
 * {@code porebench.shots.language}.
 */
final class ReadingsShots {
    private ReadingsShots() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        Theme theme = Theme.ofSymbol(arguments[1]);
        Path books = Files.createTempDirectory("porebench-shots");
        Locale language = Locale.forLanguageTag(System.getProperty("porebench.shots.language", "en"));
        EventThread.run(theme::apply);
        DemoDesk demo = EventThread.call(() -> DemoDesk.filled(books, language));
        DemoDesk.aside(() -> demo.desk.book().keep(readings(), "M. Quist", "a day at the loads"));
        demo.memory.remember(new Dimension(Integer.parseInt(arguments[2]), Integer.parseInt(arguments[3])));
        demo.memory.remember(theme);
        WorkbenchFrame window = EventThread.call(demo::open);
        EventThread.run(() -> window.desk().refresh());
        EventThread.run(() -> window.openMix(new MixId("HG-104")));
        EventThread.run(() -> window.turnTo(window.pages().named("readings").orElseThrow()));
        EventThread.settle();
        String name = String.join("-", arguments[1], arguments[2], language.toLanguageTag());
        EventThread.run(() -> Shots.save(window.frame().getRootPane(), folder.resolve(name + ".png")));
        EventThread.run(() -> {
            Named.in(window.current().component(), javax.swing.JTable.class, "readings.table")
                    .setRowSelectionInterval(1, 1);
            Named.in(window.current().component(), JTextField.class, "truck").setText("Maple 7");
            Named.in(window.current().component(), JTextField.class, "gauge").setText("5.4");
            Named.in(window.current().component(), JTextField.class, "gauge").requestFocusInWindow();
            Named.in(window.current().component(), JTextField.class, "density").setText("90");
            Named.in(window.current().component(), JTextField.class, "density").requestFocusInWindow();
        });
        EventThread.settle();
        EventThread.run(() -> Shots.save(window.frame().getRootPane(), folder.resolve(name + "-typed.png")));
        EventThread.run(window.current()::dropDraft);
        EventThread.run(window::close);
    }

    private static List<Draft> readings() {
        List<Draft> all = new ArrayList<>();
        String[] mixes = {"HG-101", "HG-104", "HG-103", "HG-108"};
        for (int i = 0; i < 24; i++) {
            all.add(Draft.of(new FieldReading(
                    new ReadingId("shot-" + i),
                    new MixId(mixes[i % mixes.length]),
                    LocalDateTime.of(2026, 11, 10 + i / 2, 7 + i % 9, 5 * (i % 12), 20),
                    i == 3
                            ? "Northern Valley Ready Mixed Concrete, truck 114, second load"
                            : Integer.toString(10 + i % 7),
                    i % 5 == 4 ? Optional.empty() : Optional.of(new MeterId("B-1")),
                    new BigDecimal("5." + i % 10),
                    Optional.of(Typed.of("23" + (10 + i), DensityUnit.KILOGRAM_PER_CUBIC_METRE)),
                    Optional.of(new BigDecimal("19.5")),
                    i % 6 == 0 ? "at the pump" : "",
                    Optional.empty(),
                    i == 20
                            ? Optional.of("The clamp leaked, which was seen only after the pressure had been let out")
                            : Optional.empty())));
        }
        return all;
    }
}
