package porebench.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import porebench.evidence.intake.Incoming;
import porebench.evidence.intake.Intake;
import porebench.evidence.intake.Sheet;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.port.DemoBook;
import porebench.record.Kept;
import porebench.record.book.LabBook;
import porebench.record.book.Training;

/**
 * The demo laboratory: an invented laboratory with a year of trials, loaded from the CSV files of {@code demo-data/}.
 *
 * <p>It loads in steps, because a source that changes must be kept before it can change. How its factors stand depends
 * on the day they are looked at: on 25 November 2026 all states are to be seen, but for those that only a correction or an
 * import without evidence brings about.
 */
public final class DemoLaboratory implements DemoBook {

    /** The day of the demo: nothing in it is of a later one, whatever day it is loaded on. */
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    /** A year of the laboratory. */
    private static final Step FIRST = new Step(
            "The demo laboratory, which is invented",
            List.of(
                    "laboratory.csv",
                    "sources.csv",
                    "equipment.csv",
                    "meters.csv",
                    "meter-calibration.csv",
                    "mix-design.csv",
                    "determinations.csv",
                    "trial-sheet.csv",
                    "factor-issues.csv"));

    /** What changed afterwards. */
    private static final Step LATER = new Step(
            "A new ledge of a source, so that a factor no longer holds",
            List.of("sources-later.csv", "source-measurements.csv"));

    /** The mixes of the airfield, as they stood before its stone changed. */
    private static final Step AIRFIELD = new Step(
            "The airfield's mixes, tested with the old ledge",
            in(
                    "airfield",
                    "sources.csv",
                    "meters.csv",
                    "meter-calibration.csv",
                    "mix-design.csv",
                    "determinations.csv",
                    "trial-sheet.csv",
                    "factor-issues.csv"));

    /**
     * The change in progress: the new ledge tested, one factor that holds, one that was replaced, one that wants more trials, and a mix
     * whose forecast came true.
     */
    private static final Step NEW_LEDGE = new Step(
            "The airfield's mixes, tested with the new ledge",
            in("new-ledge", "determinations.csv", "trial-sheet.csv"));

    /** What followed from it, and the tests of the week to come. */
    private static final Step DECIDED = new Step(
            "New factors, production and a plan of tests",
            in("new-ledge", "factor-issues.csv", "production.csv", "test-plans.csv"));

    /** Its cards on paper: with trucks, crews and a plant, one of them still out on a factor that was replaced, one lost, one back. */
    private static final Step CARDS =
            new Step("Factor cards and who holds them", in("cards", "card-prints.csv", "card-steps.csv"));

    /**
     * What its crews read at the loads: of HG-101 as its factor has it, of HG-107 with a difference to the air from the density that rose
     * on 13 October by half a per cent, of HG-103 the last one a day after its factor lapsed, and one load that failed.
     */
    private static final Step READINGS = new Step("What crews read at the loads", List.of("field-readings.csv"));

    /** What is loaded and kept at once. */
    private record Step(String why, List<String> files) {}

    private static List<String> in(String folder, String... files) {
        return Stream.of(files).map(file -> folder + "/" + file).toList();
    }

    /** Returns the names of the demo's files, in the order in which they are loaded. */
    static List<String> files() {
        return Stream.of(FIRST, AIRFIELD, LATER, NEW_LEDGE, DECIDED, CARDS, READINGS)
                .flatMap(step -> step.files().stream())
                .toList();
    }

    @Override
    public void fill(LabBook book) {
        load(book, FIRST);
        load(book, AIRFIELD);
        load(book, LATER);
        load(book, NEW_LEDGE);
        DemoDecisions.decide(book);
        load(book, DECIDED);
        handOut(book);
        load(book, READINGS);
    }

    /** Hands out the cards of the first mixes. */
    static void handOut(LabBook book) {
        load(book, CARDS);
    }

    /** Fills a lab book with the first eight mixes alone. */
    static void fillFirstYear(LabBook book) {
        load(book, FIRST);
        load(book, LATER);
    }

    private static void load(LabBook book, Step step) {
        List<Problem> problems = new ArrayList<>();
        List<Incoming> incoming = new ArrayList<>();
        for (String file : step.files()) {
            Sheet<Kept> sheet = read(file);
            problems.addAll(sheet.problems());
            sheet.rows().forEach(row -> incoming.add(new Incoming(Place.of(file, row.line()), row.value())));
        }
        Intake.Result checked = Intake.check(book, incoming, DAY);
        problems.addAll(checked.problems());
        if (!Problem.anyError(problems)) {
            problems.addAll(book.keep(checked.drafts(), Training.DEMO_KEEPER, step.why()));
        }
        if (Problem.anyError(problems)) {
            ProblemText text = ProblemText.in(Locale.ROOT);
            throw new IllegalStateException("the demo laboratory must load into an empty lab book, but is refused: "
                    + problems.stream().map(text::sayWithPlace).toList());
        }
    }

    /** Reads one of the demo's files, which are packed with the program. */
    static Sheet<Kept> read(String file) {
        try (InputStream stream = DemoLaboratory.class.getResourceAsStream("/porebench/demo-data/" + file)) {
            if (stream == null) {
                throw new IllegalArgumentException("file must be one of the demo's, but is " + file);
            }
            return CsvSheets.records(file, stream.readAllBytes());
        } catch (IOException failure) {
            throw new UncheckedIOException("reading the demo's file " + file, failure);
        }
    }
}
