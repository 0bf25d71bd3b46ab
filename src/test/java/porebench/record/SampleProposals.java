package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.record.id.CalibrationId;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.DeterminationId;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;

/** Invented drafts of factors. */
public final class SampleProposals {
    private static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    private SampleProposals() {}

    /** Returns a draft that was sent back, with everything that a draft can say. */
    public static FactorProposal full(String mix, String determination) {
        return new FactorProposal(
                new MixId(mix),
                1,
                FactorProposal.Step.SENT_BACK,
                new BigDecimal("0.40"),
                new DeterminationId(determination),
                DAY,
                DAY.plusYears(1),
                "new ledge",
                new FactorTerms(Optional.of(LocalTime.of(14, 30)), "only with sand Alder", ""),
                2,
                Map.of(new SourceId("S-1"), 1),
                new Grounds(
                        Map.of(new TrialId("T-1"), 1, new TrialId("T-2"), 2),
                        Map.of(new CalibrationId("C-1"), 1),
                        List.of(new TakenDoubt(
                                Optional.of(new TrialId("T-1")), "trial.soak-off", "soaked 30 min", "M. Ash", "seen")),
                        FactorOrigin.HERE,
                        false),
                "R. Vale",
                "M. Ash",
                LocalDateTime.of(2026, 3, 31, 16, 5),
                "wrong day",
                Optional.empty());
    }

    /** Returns a draft of the factor of a group, found on another mix. */
    public static FactorProposal lent(String mix, String tested, String determination, String group) {
        FactorProposal own = full(mix, determination);
        return own.on(own.grounds().of(Optional.of(new GroupGround(new GroupId(group), 2, new MixId(tested)))));
    }

    /** Returns a draft of a factor that a decision keeps. */
    public static FactorProposal kept(String mix, String determination, String decision) {
        FactorProposal own = full(mix, determination);
        return own.on(own.grounds().keptBy(new ChangeDecisionId(decision)));
    }

    /** Returns a draft that somebody checked. */
    public static FactorProposal checked(String mix, String determination) {
        return full(mix, determination)
                .then(FactorProposal.Step.CHECKED, "M. Ash", LocalDateTime.of(2026, 3, 31, 17, 0), "");
    }

    /** Returns a draft that was put in force. */
    public static FactorProposal issued(String mix, String determination, int revision) {
        return checked(mix, determination)
                .then(FactorProposal.Step.ISSUED, "T. Oak", LocalDateTime.of(2026, 3, 31, 18, 0), "")
                .as(revision);
    }
}
