package porebench.desk.frame;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import javax.swing.AbstractButton;
import javax.swing.text.JTextComponent;
import porebench.desk.EventThread;
import porebench.desk.Named;
import porebench.desk.ScriptedAsker;
import porebench.record.id.MixId;

/**
 * Saves trials in the window of the demo laboratory and says how long one takes until all of the page shows it and nothing waits;
 * beside it one committed insert into a database of the same folder.
 *
 * <p>Prints the medians of both in milliseconds, and the longest that a single event used the event thread's processor, painting
 * and all. The first trials are left out: classes are loaded and compiled then.
 */
final class SavedTrial {
    private static final int FIRST = 20;
    private static final int TIMES = 30;
    private static final String MIX = "HG-101";

    private final ScriptedAsker asker = new ScriptedAsker();
    private final StartedWindow started;
    private final WorkbenchFrame window;

    private SavedTrial(Path folder) throws Exception {
        started = new StartedWindow(folder, asker);
        window = started.window();
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("saved-trial");
        SavedTrial bench = new SavedTrial(folder);
        bench.open();
        double[] ours = new double[TIMES];
        for (int i = -FIRST; i < TIMES; i++) {
            if (i == 0) {
                EventThread.run(() -> bench.started.times().begin());
            }
            double took = bench.save();
            if (i >= 0) {
                ours[i] = took;
            }
        }
        Duration longest = EventThread.call(() -> bench.started.times().longer(Duration.ZERO, Duration.ZERO).stream()
                .map(EventTimes.Held::time)
                .max(Duration::compareTo)
                .orElse(Duration.ZERO));
        System.out.printf(
                Locale.ROOT, "%.2f %.2f %.1f%n", median(ours), median(inserts(folder)), longest.toNanos() / 1e6);
        System.out.flush();
        Runtime.getRuntime().halt(0);
    }

    private void open() throws Exception {
        started.makeDemo(started.demoFile());
        started.startWith(started.demoFile());
        EventThread.run(() -> window.desk().setPerson("R. Vale"));
        EventThread.run(() -> window.openMix(new MixId(MIX)));
        rest();
        EventThread.run(() -> window.turnTo(window.pages().trials()));
        asker.reasons.add("yearly check");
        EventThread.run(() -> button("begin").doClick(0));
        rest();
    }

    /** Waits until nothing is looked up and nothing waits for the event thread. */
    private void rest() throws Exception {
        boolean came = EventThread.comes(() -> !window.desk().tools().tasks().isAwaited()
                && !window.desk().tools().tasks().isBusy()
                && window.desk().evidence().isPresent());
        if (!came) {
            throw new IllegalStateException("the window must come to rest");
        }
        EventThread.settle();
    }

    private AbstractButton button(String name) {
        return Named.in(window.pages().trials().place(), AbstractButton.class, name);
    }

    private int trials() {
        return window.desk().evidence().orElseThrow().determinations().stream()
                .mapToInt(one -> one.trials().size())
                .sum();
    }

    /** Returns the milliseconds from Save to a page that shows it. */
    private double save() throws Exception {
        EventThread.run(() -> {
            type("fine", "4868");
            type("coarse", "7409");
            type("soak", "15");
            type("waterTemperature", "21");
            type("withdrawn", "369");
            type("gauge", "5.6");
        });
        rest();
        asker.reasons.add("as it was read");
        int before = EventThread.call(this::trials);
        long begin = System.nanoTime();
        EventThread.run(() -> button("save").doClick(0));
        if (!EventThread.comes(() -> trials() > before)) {
            throw new IllegalStateException("the trial must be kept, but was not: " + asker.told);
        }
        rest();
        return (System.nanoTime() - begin) / 1e6;
    }

    private void type(String field, String text) {
        Named.in(window.pages().trials().place(), JTextComponent.class, field).setText(text);
    }

    private static double[] inserts(Path folder) throws SQLException {
        double[] took = new double[TIMES];
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("bare.sqlite"));
                Statement setup = connection.createStatement()) {
            setup.execute("PRAGMA journal_mode = WAL");
            setup.execute("PRAGMA synchronous = FULL");
            setup.execute("CREATE TABLE trial (trial_id TEXT PRIMARY KEY, gauge_pct TEXT)");
            try (PreparedStatement insert = connection.prepareStatement("INSERT INTO trial VALUES (?, '5.6')")) {
                for (int i = -FIRST; i < TIMES; i++) {
                    insert.setString(1, "T-" + i);
                    long begin = System.nanoTime();
                    insert.executeUpdate();
                    if (i >= 0) {
                        took[i] = (System.nanoTime() - begin) / 1e6;
                    }
                }
            }
        }
        return took;
    }

    private static double median(double[] times) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
