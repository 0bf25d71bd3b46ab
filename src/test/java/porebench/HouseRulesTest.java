package porebench;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.lang.conditions.ArchConditions.accessTargetWhere;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Locale;
import java.util.Set;
import porebench.method.Problem;
import porebench.port.PreparedFile;
import porebench.record.book.Records;

/** Keeps the rules of the house: names, screens, and that time, locale, charset and chance are arguments. */
@AnalyzeClasses(packages = "porebench", importOptions = ArchitectureTest.MainClasses.class)
class HouseRulesTest {
    // Screens.

    @ArchTest
    static final ArchRule screenModelsKnowNoSwing = noClasses()
            .that()
            .resideInAPackage("porebench.desk..")
            .and()
            .haveSimpleNameEndingWith("Model")
            .and(not(assignableTo("javax.swing.table.TableModel")))
            .and(not(assignableTo("javax.swing.ListModel")))
            .and(not(assignableTo("javax.swing.tree.TreeModel")))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.swing..", "java.awt..")
            .allowEmptyShould(ArchitectureTest.isUnwritten("desk"))
            .because("what a screen knows is tested without a display");

    @ArchTest
    static final ArchRule workLeavesTheEventThreadInOnePlace = noClasses()
            .that()
            .resideInAPackage("porebench.desk..")
            .and(describe(
                    "are not Tasks", type -> !outermost(type).getSimpleName().equals("Tasks")))
            .should()
            .dependOnClassesThat()
            .haveNameMatching("javax\\.swing\\.SwingWorker|java\\.lang\\.Thread|java\\.util\\.concurrent\\.Executors")
            .allowEmptyShould(ArchitectureTest.isUnwritten("desk"))
            .because("Tasks shows progress, never swallows a failure, and runs at once in tests");

    // Names.

    @ArchTest
    static final ArchRule namesSayWhatAClassIs = noClasses()
            .should()
            .haveNameMatching(".*(Utils?|Helper|Manager|Engine|Service|Impl)(\\$.*)?")
            .because("a noun of the trade says what it does, these say nothing");

    @ArchTest
    static final ArchRule packagesAreNamedForTheirContent = noClasses()
            .should()
            .resideInAnyPackage(
                    "porebench..util..",
                    "porebench..utils..",
                    "porebench..common..",
                    "porebench..helper..",
                    "porebench..helpers..",
                    "porebench..manager..",
                    "porebench..impl..",
                    "porebench..misc..")
            .because("a package without a subject collects everything");

    // Time, locale, charset, chance and streams are arguments.

    @ArchTest
    static final ArchRule noOldDates = noClasses()
            .that()
            .resideOutsideOfPackages("porebench.chart..", "porebench.print..")
            .should()
            .dependOnClassesThat()
            .haveNameMatching("java\\.util\\.(Date|Calendar|GregorianCalendar)|java\\.text\\.(Simple)?DateFormat")
            .because("java.time says whether a day or an instant is meant;"
                    + " only JFreeChart's date axis and PDFBox's document date take nothing else");

    @ArchTest
    static final ArchRule timeComesFromAClock = noClasses()
            .that()
            .resideOutsideOfPackage("porebench.app..")
            .should(accessTargetWhere(
                    ForbiddenCalls.call("that reads the machine's clock or zone", ForbiddenCalls::readsTheClock)))
            .because("the clock and the zone are arguments, so that a test can say which day it is");

    @ArchTest
    static final ArchRule localeIsAnArgument = noClasses()
            .should(accessTargetWhere(
                    ForbiddenCalls.call("that takes the machine's locale", ForbiddenCalls::takesDefaultLocale)))
            .because("a number written with a decimal comma on one machine cannot be read on the next");

    @ArchTest
    static final ArchRule onlyAppAsksForTheMachinesLocale = noClasses()
            .that()
            .resideOutsideOfPackage("porebench.app..")
            .should()
            .callMethod(Locale.class, "getDefault")
            .because("the locale is an argument; app asks once and hands it on");

    @ArchTest
    static final ArchRule charsetIsAnArgument = noClasses()
            .should(accessTargetWhere(
                    ForbiddenCalls.call("that takes the machine's charset", ForbiddenCalls::takesDefaultCharset)))
            .because("the machine's charset is not the file's; text is UTF-8 unless a format says otherwise");

    @ArchTest
    static final ArchRule chanceHasASeed = noClasses()
            .should(accessTargetWhere(
                    ForbiddenCalls.call("that draws without a seed", ForbiddenCalls::drawsWithoutASeed)))
            .because("a simulation must come out the same when it is run again");

    @ArchTest
    static final ArchRule onlyCommandAndAppPrintToTheConsole = noClasses()
            .that()
            .resideOutsideOfPackages("porebench.command..", "porebench.app..")
            .should(ACCESS_STANDARD_STREAMS)
            .because("the command line's output is a contract, and a window has no console");

    @ArchTest
    static final ArchRule onlyAppEndsTheProgram = noClasses()
            .that()
            .resideOutsideOfPackage("porebench.app..")
            .should()
            .callMethod(System.class, "exit", int.class)
            .because("a command returns its exit status, so that a test can read it");

    @ArchTest
    static final ArchRule filesAreWrittenThroughOneGate = noClasses()
            .that()
            .resideOutsideOfPackage("porebench.store..")
            .and(not(equivalentTo(PreparedFile.class)))
            .and(describe("are not the log", type -> !type.getName().equals("porebench.app.LogFile")))
            .should(accessTargetWhere(
                    ForbiddenCalls.call("that writes a file past the gate", ForbiddenCalls::writesAFile)))
            .because("OutputFile keeps lab books, devices and files of others from being written over;"
                    + " only store writes its own file, and app the log in the folder that is its own");

    @ArchTest
    static final ArchRule whatIsComputedIsAskedFor = methods()
            .that()
            .areDeclaredInClassesThat()
            .resideInAnyPackage("porebench.quantity..", "porebench.statistics..", "porebench.method..")
            .and()
            .arePublic()
            .and(not(CalledByTheProduct.neededWithoutACaller()))
            .should(CalledByTheProduct.haveACaller())
            .because("a computation that only tests call is certified for nobody");

    /** Where a problem is said, written down as it is, handed on, or known again among those somebody has taken on. */
    private static final Set<String> WRITES_CODES_DOWN = Set.of(
            "porebench.method.Problem",
            "porebench.method.ProblemText",
            "porebench.record.book.BookCheck$Fault",
            "porebench.evidence.issue.IssueDoubt",
            "porebench.evidence.issue.TakingOn",
            "porebench.evidence.standing.WrittenProblem",
            "porebench.port.OpeningRefused",
            "porebench.port.OutputRefused",
            "porebench.exchange.text.HeadedRow",
            "porebench.store.check.Inspection",
            "porebench.command.reply.Reply",
            "porebench.command.book.IssueCommand",
            // The address of what the manual says of it.
            "porebench.desk.manual.ManualLink");

    @ArchTest
    static final ArchRule codesSteerNothing = noClasses()
            .that(describe("do not write codes down", type -> !WRITES_CODES_DOWN.contains(type.getName())))
            .should(accessTargetWhere(ForbiddenCalls.call(
                    "that asks for the code of a problem",
                    (owner, name, parameters) -> owner.equals(Problem.class.getName()) && name.equals("code"))))
            .because("a message may be split or worded anew; what is done about a problem follows from its kind");

    /** Who may read all records of a kind: sources, meters, equipment, profiles and studies are few; the rest is bulk work. */
    private static final Set<String> READS_A_WHOLE_KIND = Set.of(
            "porebench.evidence.MeterStory",
            "porebench.evidence.LaboratoryEquipment",
            "porebench.evidence.EvidenceReader",
            "porebench.evidence.ReadBench",
            "porebench.desk.Question$Newest",
            "porebench.desk.study.KeptStudies",
            // Bulk work: everything of a laboratory at one time, and the export.
            "porebench.evidence.Evidence",
            "porebench.exchange.Export",
            "porebench.evidence.custody.Custody",
            // The words by which mixes are found, read once when somebody first looks for one.
            "porebench.desk.frame.rail.MixWords",
            // They hand the question on.
            "porebench.record.book.DraftedRecords");

    @ArchTest
    static final ArchRule noQuestionReadsAWholeKind = noClasses()
            .that(describe(
                    "ask about a few records",
                    type -> !READS_A_WHOLE_KIND.contains(type.getName())
                            && !type.getPackageName().startsWith("porebench.store")
                            && !type.isAssignableFrom(Records.class)))
            .should(accessTargetWhere(
                    ForbiddenCalls.call("that reads all records of a kind", ForbiddenCalls::readsAWholeKind)))
            .because("a question about one mix would take as long as there are trials in the lab book");

    private static JavaClass outermost(JavaClass type) {
        return type.getEnclosingClass().map(HouseRulesTest::outermost).orElse(type);
    }
}
