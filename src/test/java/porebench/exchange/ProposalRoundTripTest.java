package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import porebench.exchange.sheet.FactorIssueFormat;
import porebench.exchange.sheet.Format;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.FactorTerms;
import porebench.record.SampleProposals;
import porebench.record.Samples;

/** Drafts, and on what terms a factor holds, come back from a file as they were. */
class ProposalRoundTripTest {
    @Test
    void aDraftReadsBackAtEveryStep() throws IOException {
        Format<?> format = CsvSheets.FORMATS.stream()
                .filter(one -> one.type().equals(FactorProposal.class))
                .findFirst()
                .orElseThrow();
        for (FactorProposal draft : new FactorProposal[] {
            SampleProposals.full("M-1", "M-1/1"),
            SampleProposals.checked("M-1", "M-1/1"),
            SampleProposals.issued("M-1", "M-1/1", 3),
            SampleProposals.lent("M-2", "M-1", "M-1/1", "G-1"),
            SampleProposals.lent("M-1", "M-1", "M-1/1", "G-1"),
            SampleProposals.kept("M-1", "M-1/2", "M-1/c1")
        }) {
            assertThat(RoundTripTest.written(format, draft)).isEqualTo(draft);
        }
    }

    @Test
    void theTermsOfAFactorReadBack() throws IOException {
        FactorIssue issue = Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 9))
                .under(new FactorTerms(FactorTerms.time("07:05"), "only with \"Alder\", not pumped", "P. Linden"));
        assertThat(RoundTripTest.written(new FactorIssueFormat(), issue)).isEqualTo(issue);
    }
}
