package porebench.evidence.issue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.Moments;
import porebench.evidence.RegisterRow;
import porebench.evidence.ShownUncertainty;
import porebench.evidence.budget.QuotedBudget;
import porebench.evidence.custody.CardAlarms;
import porebench.evidence.paper.RegisterList;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.budget.BudgetResult;
import porebench.port.RegisterTable;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.StatedUncertainty;
import porebench.record.id.ChangeDecisionId;
import porebench.store.Books;

/** The uncertainty that is quoted of a factor on the day of its issue, and what is seen of it afterwards. */
class IssueUncertaintyTest {
    @TempDir
    private Path folder;

    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(folder);
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private FactorIssue issue() {
        return bench.issuing(Bench.decision(Bench.FIRST, Bench.START)).value().orElseThrow();
    }

    private FactorIssue stated(FactorIssue issue) {
        return IssueUncertainty.stated(bench.evidence(), bench.scatter(), issue);
    }

    private RegisterRow row() {
        return RegisterRow.of(bench.evidence(), Bench.START);
    }

    private static Optional<Problem> note(String code) {
        return Optional.of(Problem.warning("uncertainty", code, 1));
    }

    /** The very figure that the page quotes, with k, by which the combined standard uncertainty was multiplied. */
    @Test
    void isTheOneUncertaintyThatIsQuoted() {
        BudgetResult quoted = QuotedBudget.of(
                        bench.evidence(),
                        bench.evidence().determination(Bench.FIRST).orElseThrow(),
                        bench.scatter())
                .orElseThrow();
        StatedUncertainty stated = stated(issue()).grounds().uncertainty().orElseThrow();
        assertThat(stated.expandedPercent().doubleValue())
                .isCloseTo(quoted.uncertaintyPercent(), within(1e-6))
                .isBetween(0.01, 0.5);
        assertThat(stated.coverageFactor().isPresent()).isEqualTo(!quoted.isDrawn());
        stated.coverageFactor()
                .ifPresent(k -> assertThat(k.doubleValue() * quoted.budget().combinedPercent())
                        .isCloseTo(stated.expandedPercent().doubleValue(), within(1e-5)));
        assertThat(stated.origin()).isEqualTo(FactorOrigin.HERE);
    }

    @Test
    void isNeverThatOfAnotherFactor() {
        FactorIssue issue = issue();
        FactorIssue other = new FactorIssue(
                issue.mixId(),
                issue.revision(),
                issue.action(),
                new BigDecimal("0.6"),
                issue.determinationId(),
                issue.meterType(),
                issue.inForceFrom(),
                issue.recheckBy(),
                issue.issuedBy(),
                issue.approvedBy(),
                issue.reason(),
                issue.mixVersion(),
                issue.sourceVersions(),
                issue.profileId(),
                "",
                "",
                issue.grounds().keptBy(new ChangeDecisionId("M-1/c1")));
        assertThat(stated(other).grounds().uncertainty()).isEmpty();
        assertThat(ShownUncertainty.of(other).note()).isEqualTo(note("register.uncertainty-of-kept"));
        bench.issue(Bench.START);
        FactorIssue withdrawn = Issuing.withdraw(bench.evidence(), Bench.START, "R. Vale", "pit closed")
                .value()
                .orElseThrow();
        assertThat(stated(withdrawn)).isEqualTo(withdrawn);
        assertThat(ShownUncertainty.of(withdrawn)).isEqualTo(ShownUncertainty.NONE);
    }

    /** A factor of before says why it has none; nobody works one out for it afterwards, when the scatter known is another. */
    @Test
    void anOlderFactorHasNoneAndSaysWhy() {
        bench.issue(Bench.START);
        assertThat(row().uncertainty().expandedPercent()).isEmpty();
        assertThat(row().uncertainty().note()).isEqualTo(note("register.uncertainty-not-stated"));
    }

    @Test
    void standsInTheRegisterAlsoWhereThatIsKeptBesideTheEntries() {
        FactorIssue stated = stated(issue());
        Books.keep(bench.book, stated);
        StatedUncertainty uncertainty = stated.grounds().uncertainty().orElseThrow();
        assertThat(row().uncertainty())
                .isEqualTo(new ShownUncertainty(
                        Optional.of(uncertainty.expandedPercent()), uncertainty.coverageFactor(), Optional.empty()));
        LaboratoryStanding.of(bench.book);
        LaboratoryStanding read = LaboratoryStanding.of(bench.book);
        assertThat(read.rows(Bench.START)).containsExactly(row());
        RegisterList list = RegisterList.of(
                Optional.empty(),
                Moments.endOf(Bench.START),
                read.rows(Bench.START),
                read.rows(Bench.START),
                CardAlarms.NONE,
                ProblemText.in(Locale.ENGLISH, ZoneOffset.UTC),
                bench.book.head());
        assertThat(RegisterTable.of(list).heading()).containsSequence("expanded_u_pct", "coverage_factor");
        assertThat(RegisterTable.of(list).rows().get(0))
                .contains(uncertainty.expandedPercent().toPlainString());
        assertThat(bench.book.verify()).isEmpty();
    }

    @Test
    void oneFromAFileSaysSo() {
        FactorIssue stated = stated(issue());
        Books.keep(
                bench.book,
                stated.on(stated.grounds()
                        .stating(stated.grounds().uncertainty().map(one -> one.from(FactorOrigin.IMPORTED)))));
        assertThat(row().uncertainty().expandedPercent()).isPresent();
        assertThat(row().uncertainty().note()).isEqualTo(note("register.uncertainty-from-file"));
    }
}
