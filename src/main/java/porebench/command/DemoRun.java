package porebench.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.command.bench.FactorReport;
import porebench.command.bench.SampleReport;
import porebench.command.book.NewBook;
import porebench.command.reply.Failures;
import porebench.command.reply.Machine;
import porebench.command.reply.NumberText;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.command.reply.Reply;
import porebench.command.reply.TextPage;
import porebench.evidence.CardState;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.issue.IssueUncertainty;
import porebench.evidence.issue.Issuing;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.WeighOut;
import porebench.method.trial.StopRule;
import porebench.port.CardHandout;
import porebench.port.LabBookShelf;
import porebench.port.OpeningRefused;
import porebench.port.OutputFile;
import porebench.port.OutputRefused;
import porebench.port.Paper;
import porebench.quantity.Volume;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.id.DeterminationId;

/**
 * The whole job in text, for a machine without a display: the newcomer's mix of the demo lab book from its design to its
 * card.
 *
 * <p>The newcomer's mix is one that has its trials but no factor yet. The factor is issued in the demo lab book only, by
 * {@code demo}; running again prints the card of the factor that is then in force.
 */
public final class DemoRun {
    private static final String WHO = "demo";

    private final Machine here;
    private final Ports ports;
    private final Texts words;
    private final ProblemText problemText;
    private final TextPage page = new TextPage();
    private Optional<Path> log = Optional.empty();

    public DemoRun(Machine here, Ports ports) {
        this.here = here;
        this.ports = ports;
        this.words = here.words();
        this.problemText = ProblemText.in(here.locale(), here.zone());
    }

    /**
     * Runs the job and says what came of it.
     *
     * @param file the demo lab book, made when it is not there
     * @param cards the folder for the card
     * @return the exit status: 0 done, 1 refused
     */
    public int run(Path file, Path cards) {
        List<Problem> problems = new ArrayList<>();
        page.line(words.get("demo.no-display"));
        trying(
                () -> {
                    try (LabBook book = openOrBegin(file)) {
                        fromDesignToCard(book, file, cards, problems);
                    }
                },
                problems);
        return say(problems);
    }

    /**
     * Makes the demo lab book when it is not there; one that is there is left as it is.
     *
     * @throws OpeningRefused if it cannot be begun
     */
    public void makeBook(Path file) {
        if (!Files.exists(file)) {
            openOrBegin(file).close();
        }
    }

    private LabBook openOrBegin(Path file) {
        LabBookShelf shelf = ports.shelf().get();
        if (Files.exists(file)) {
            return shelf.open(file);
        }
        makeFolder(file.resolveSibling(""));
        return NewBook.begin(shelf, file, ports.demo().get()::fill);
    }

    private void trying(Runnable work, List<Problem> problems) {
        try {
            work.run();
        } catch (OpeningRefused refused) {
            problems.add(refused.problem());
        } catch (OutputRefused refused) {
            problems.addAll(refused.problems());
        } catch (RuntimeException failure) {
            problems.add(OneCommand.failed(failure, here.locale()));
            log = Failures.log(failure, here);
        }
    }

    private int say(List<Problem> problems) {
        page.lines().forEach(here.out()::println);
        here.out().flush();
        problems.forEach(problem -> here.err().println(Reply.line(problem, words, problemText)));
        log.ifPresent(file -> here.err().println(words.get("problem.log", file.toString())));
        here.err().flush();
        return Reply.delivered(here, Problem.anyError(problems) ? Reply.REFUSED : Reply.DONE);
    }

    private static void makeFolder(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException failure) {
            throw new UncheckedIOException("making the folder " + folder, failure);
        }
    }

    /** Returns the mix to work on: one ready for its first factor, else the one an earlier run issued for, else any in force. */
    private static Optional<Evidence> newcomersMix(LabBook book, LocalDateTime now) {
        List<Evidence> all = Evidence.ofAll(book);
        return all.stream()
                .filter(evidence -> evidence.newestIssue()
                        .filter(issue -> issue.isIssue() && issue.issuedBy().equals(WHO))
                        .isPresent())
                .findFirst()
                .or(() -> all.stream().filter(DemoRun::isReady).findFirst())
                .or(() -> all.stream()
                        .filter(evidence -> CardState.refusal(evidence, now).isEmpty())
                        .findFirst());
    }

    private static boolean isReady(Evidence evidence) {
        return evidence.newestIssue().isEmpty()
                && evidence.openDetermination()
                        .filter(open -> open.counted() >= evidence.profile().count(FigureName.LEAST_TRIALS))
                        .isPresent();
    }

    private void fromDesignToCard(LabBook book, Path file, Path cards, List<Problem> problems) {
        page.row(words.get("demo.book"), file.toString(), "");
        newcomersMix(book, here.now())
                .ifPresentOrElse(
                        evidence -> work(book, evidence, cards, problems),
                        () -> problems.add(Problem.error("mix", "command.no-demo-mix", file.toString())));
    }

    private void work(LabBook book, Evidence evidence, Path cards, List<Problem> problems) {
        LocalDateTime now = here.now();
        MixDesign mix = evidence.mix().value();
        Optional<JudgedDetermination> basis = evidence.inForceAt(now)
                .flatMap(issue -> evidence.determination(issue.determinationId()))
                .or(evidence::openDetermination)
                .or(() -> evidence.determinations().stream().reduce((first, second) -> second));
        basis.ifPresent(determination -> {
            sample(evidence, mix, determination, problems);
            page.gap();
            Map<DeterminationId, StopRule> stops = evidence.stop(
                            determination, LaboratoryStanding.of(book).scatter())
                    .map(stop -> Map.of(determination.determination().value().id(), stop))
                    .orElse(Map.of());
            new FactorReport(here, List.of(determination), stops).text(page);
        });
        if (CardState.refusal(evidence, now).isPresent()) {
            basis.ifPresent(determination -> issue(book, evidence, determination, problems));
        }
        Evidence issued = Evidence.of(book, mix.id()).orElseThrow();
        Optional<Problem> refusal = CardState.refusal(issued, now);
        if (refusal.isPresent()) {
            problems.add(refusal.get());
            return;
        }
        card(book, issued, cards, problems);
    }

    private void sample(Evidence evidence, MixDesign mix, JudgedDetermination basis, List<Problem> problems) {
        Volume bowl = basis.trials().get(0).trial().value().readings().bowl().value();
        Answer<CorrectionSample> answer = CorrectionSample.of(mix.batch(), bowl);
        problems.addAll(answer.problems());
        answer.value().ifPresent(sample -> {
            page.gap();
            int trials = evidence.profile().count(FigureName.LEAST_TRIALS);
            WeighOut weighOut = WeighOut.of(sample, trials, 0, evidence.profile());
            SampleReport.of(here, mix, mix.batch().wetSieved(), sample, weighOut)
                    .text(page);
        });
    }

    private void issue(LabBook book, Evidence evidence, JudgedDetermination basis, List<Problem> problems) {
        Issuing.Decision decision = new Issuing.Decision(
                basis.determination().value().id(), here.today(), Optional.empty(), WHO, "", words.get("demo.reason"));
        LaboratoryScatter scatter = LaboratoryStanding.of(book).scatter();
        Answer<FactorIssue> answer = Issuing.issue(evidence, scatter, decision);
        answer.problems().stream().filter(Problem::isError).forEach(problems::add);
        answer.value().ifPresent(issue -> {
            List<Problem> refused = book.keep(
                    List.of(Draft.of(IssueUncertainty.stated(evidence, scatter, issue))),
                    WHO,
                    words.get("demo.reason"));
            problems.addAll(refused);
        });
    }

    /** Returns the first name that is free: an earlier card is somebody's, too. */
    private static OutputFile freeName(Path folder, String name) {
        OutputFile file = OutputFile.fresh(folder.resolve(name + ".pdf"));
        for (int number = 2; Files.exists(file.path()); number++) {
            file = OutputFile.fresh(folder.resolve(name + "-" + number + ".pdf"));
        }
        return file;
    }

    private void card(LabBook book, Evidence evidence, Path cards, List<Problem> problems) {
        makeFolder(cards);
        FactorIssue issue = evidence.inForceAt(here.now()).orElseThrow();
        OutputFile file =
                freeName(cards, issue.mixId().text().replaceAll("[^A-Za-z0-9-]", "_") + "-r" + issue.revision());
        Answer<CardHandout.Handed> answer = new CardHandout(book, ports.press().get(), here.locale())
                .toFile(
                        new CardHandout.Wish(
                                issue.mixId(),
                                Optional.empty(),
                                Paper.A6,
                                false,
                                here.now(),
                                WHO,
                                words.get("demo.reason")),
                        file);
        problems.addAll(answer.problems());
        answer.value().ifPresent(handed -> {
            page.gap();
            page.line(words.get(
                    "issue.issued",
                    Integer.toString(issue.revision()),
                    new NumberText(here.locale()).exact(issue.factorPercent()),
                    issue.inForceFrom().toString(),
                    issue.recheckBy().toString(),
                    issue.issuedBy()));
            page.line(words.get("demo.card", file.path().toString()));
        });
    }
}
