package porebench;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;

/** Keeps the map of packages: every arrow, and every library that one package alone may import. */
@AnalyzeClasses(packages = "porebench", importOptions = ArchitectureTest.MainClasses.class)
class ArchitectureTest {
    private static final String[] COMPUTING = {"method", "statistics", "quantity"};
    private static final String[] PORT_AND_BELOW = {"port", "evidence", "record", "method", "statistics", "quantity"};

    /** What crosses a port as a picture: a finished one, or something to draw one with. */
    private static final DescribedPredicate<JavaClass> PICTURE =
            equivalentTo(BufferedImage.class).or(equivalentTo(Graphics2D.class));

    // The arrows.

    @ArchTest
    static final ArchRule quantityImportsNothingOfOurs =
            arrows("quantity", "it is the ground that every other package stands on");

    @ArchTest
    static final ArchRule statisticsImportsOnlyQuantity =
            arrows("statistics", "a statistic knows numbers, not air meters or records", "quantity");

    @ArchTest
    static final ArchRule methodImportsOnlyStatisticsAndQuantity =
            arrows("method", "a computation must run without a lab book, a file or a window", "statistics", "quantity");

    @ArchTest
    static final ArchRule recordImportsOnlyTheComputingPackages =
            arrows("record", "what a laboratory keeps does not depend on where it is kept or shown", COMPUTING);

    @ArchTest
    static final ArchRule evidenceImportsOnlyRecordAndBelow = arrows(
            "evidence",
            "what follows from the records is the same wherever they are kept and whoever asks",
            "record",
            "method",
            "statistics",
            "quantity");

    @ArchTest
    static final ArchRule portImportsOnlyEvidenceAndBelow = arrows(
            "port",
            "a port speaks in what is kept and what follows from it, not in what stands behind it",
            "evidence",
            "record",
            "method",
            "statistics",
            "quantity");

    @ArchTest
    static final ArchRule roomsAreFreeOfCircles = slices().matching("porebench.(**)")
            .should()
            .beFreeOfCycles()
            .because("a room that needs the one that needs it is one room with a wall in it");

    @ArchTest
    static final ArchRule storeSeesOnlyPortAndBelow =
            arrows("store", "keeping records must not depend on who asks for them", PORT_AND_BELOW);

    @ArchTest
    static final ArchRule exchangeSeesOnlyPortAndBelow = arrows(
            "exchange",
            "reading a file gives rows and problems; what becomes of them is not its business",
            PORT_AND_BELOW);

    @ArchTest
    static final ArchRule printSeesOnlyPortAndBelow = arrows(
            "print", "a card is drawn from records, the same from the window and the command line", PORT_AND_BELOW);

    @ArchTest
    static final ArchRule balanceSeesOnlyPortAndBelow = arrows(
            "balance", "hearing what a balance sends must not depend on who weighs what with it", PORT_AND_BELOW);

    @ArchTest
    static final ArchRule chartSeesOnlyPortAndBelow =
            arrows("chart", "a plot is drawn from records and statistics, in whatever window shows it", PORT_AND_BELOW);

    @ArchTest
    static final ArchRule commandSeesOnlyPortAndBelow = arrows(
            "command",
            "it reaches the lab book, files and printing through porebench.port, wired in porebench.app",
            PORT_AND_BELOW);

    @ArchTest
    static final ArchRule deskSeesOnlyChartPortAndBelow = arrows(
            "desk",
            "it reaches the lab book, files and printing through porebench.port, wired in porebench.app",
            "chart",
            "port",
            "evidence",
            "record",
            "method",
            "statistics",
            "quantity");

    @ArchTest
    static final ArchRule nothingImportsApp = noClasses()
            .that()
            .resideOutsideOfPackage("porebench.app..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("porebench.app..")
            .because("app wires the others together by constructor arguments; nothing looks anything up in it");

    @ArchTest
    static final ArchRule everyClassHasAPlaceOnTheMap = classes()
            .should()
            .resideInAnyPackage(
                    "porebench.quantity..",
                    "porebench.statistics..",
                    "porebench.method..",
                    "porebench.record..",
                    "porebench.evidence..",
                    "porebench.port..",
                    "porebench.store..",
                    "porebench.exchange..",
                    "porebench.print..",
                    "porebench.balance..",
                    "porebench.chart..",
                    "porebench.command..",
                    "porebench.desk..",
                    "porebench.app..")
            .because("a package outside the map would be bound by no arrow");

    @ArchTest
    static final ArchRule computationsOfTheMethodDoNotSeeEachOther = slices().matching("porebench.method.(*)..")
            .should()
            .notDependOnEachOther()
            .allowEmptyShould(isUnwritten("method"))
            .because("each is small and checked alone; what they share stands in porebench.method itself");

    @ArchTest
    static final ArchRule sharedTypesOfTheMethodDoNotSeeTheComputations = noClasses()
            .that()
            .resideInAPackage("porebench.method")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("porebench.method.*..")
            .allowEmptyShould(isUnwritten("method"))
            .because("the types that all computations share would otherwise tie them to each other");

    @ArchTest
    static final ArchRule aForecastIsNeitherKeptNorIssuedNorPrinted = noClasses()
            .that()
            .resideInAnyPackage(
                    "porebench.record..",
                    "porebench.evidence.issue..",
                    "porebench.evidence.paper..",
                    "porebench.evidence.standing..",
                    "porebench.evidence.intake..",
                    "porebench.store..",
                    "porebench.exchange..",
                    "porebench.print..",
                    "porebench.command.book..",
                    "porebench.desk.factor..",
                    "porebench.desk.register..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("porebench.method.forecast..", "porebench.evidence.forecast..")
            .because("a factor is found by test only: no door of the laboratory takes an estimate made before testing");

    // The libraries, each in its own package.

    @ArchTest
    static final ArchRule commonsMathOnlyInStatistics =
            only("statistics", "distributions have one home", "org.apache.commons.math3..");

    @ArchTest
    static final ArchRule sqlOnlyInStore = only(
            "store",
            "the lab book can change its database without anyone else noticing",
            "java.sql..",
            "javax.sql..",
            "org.jdbi..",
            "org.flywaydb..",
            "org.sqlite..",
            "org.postgresql..");

    @ArchTest
    static final ArchRule openCsvOnlyInExchange = only(
            "exchange.text", "one place reads foreign files and turns every fault into a problem", "com.opencsv..");

    @ArchTest
    static final ArchRule pdfBoxOnlyInPrint = only(
            "print",
            "one place draws on paper",
            "org.apache.pdfbox..",
            "org.apache.fontbox..",
            "de.rototor.pdfbox..",
            "java.awt.print..",
            "javax.print..",
            "com.google.zxing..");

    @ArchTest
    static final ArchRule svgOnlyInPrint =
            only("print", "one place writes pictures into files", "org.apache.batik..", "org.w3c.dom..", "javax.xml..");

    @ArchTest
    static final ArchRule jFreeChartOnlyInChart =
            only("chart", "screens are given a finished JComponent and need not know who draws it", "org.jfree..");

    @ArchTest
    static final ArchRule serialLinesOnlyInBalance = only(
            "balance",
            "native code that opens devices has one door, and the product runs without it",
            "com.fazecast..");

    @ArchTest
    static final ArchRule picocliOnlyInCommand =
            only("command", "only the command line parses a command line", "picocli..");

    @ArchTest
    static final ArchRule jacksonOnlyInCommand = only(
            "command",
            "JSON is the command line's way of answering, not a way to keep records",
            "com.fasterxml.jackson..");

    @ArchTest
    static final ArchRule flatLafAndMigLayoutOnlyInDesk = only(
            "desk",
            "look and layout belong to the screens; app only tells desk to open",
            "com.formdev..",
            "net.miginfocom..");

    @ArchTest
    static final ArchRule commonmarkOnlyInTheManual =
            only("desk.manual", "one place shows the manual", "org.commonmark..");

    @ArchTest
    static final ArchRule swingOnlyInDeskAndChart = noClasses()
            .that()
            .resideOutsideOfPackages("porebench.desk..", "porebench.chart..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("javax.swing..")
            .because("only desk has screens; chart hands it a plot as a component, and app only tells desk to open");

    @ArchTest
    static final ArchRule awtOnlyWhereSomethingIsDrawn = noClasses()
            .that()
            .resideOutsideOfPackages("porebench.desk..", "porebench.chart..", "porebench.print..", "porebench.app..")
            .should()
            .dependOnClassesThat(resideInAPackage("java.awt..").and(not(PICTURE)))
            .because("numbers, records and commands run on a machine with no fonts and no display;"
                    + " print draws pages and app asks whether there is a display");

    @ArchTest
    static final ArchRule picturesCrossOnlyThePort = noClasses()
            .that()
            .resideOutsideOfPackages(
                    "porebench.desk..", "porebench.chart..", "porebench.print..", "porebench.app..", "porebench.port..")
            .should()
            .dependOnClassesThat(PICTURE)
            .because("a preview is handed from print to desk as a finished picture, a plot from desk to print as one to"
                    + " draw, and neither is a record");

    @ArchTest
    static final ArchRule onlyListedLibraries = classes()
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(
                    "porebench..",
                    "java..",
                    "javax.swing..",
                    "javax.print..",
                    "javax.crypto..",
                    "javax.imageio..",
                    "javax.accessibility..",
                    "javax.sql..",
                    "org.jspecify.annotations..",
                    "org.apache.commons.math3..",
                    "org.jdbi..",
                    "org.flywaydb..",
                    "org.sqlite..",
                    "com.opencsv..",
                    "org.apache.pdfbox..",
                    "org.apache.fontbox..",
                    "de.rototor.pdfbox.graphics2d..",
                    "org.apache.batik.svggen..",
                    "javax.xml.parsers..",
                    "javax.xml.transform..",
                    "org.w3c.dom..",
                    "org.jfree..",
                    "picocli..",
                    "com.fazecast.jSerialComm..",
                    "com.google.zxing..",
                    "com.fasterxml.jackson.core..",
                    "org.commonmark..",
                    "com.formdev..",
                    "net.miginfocom.."))
            .because("a library that only came along with another one may leave with it; DEVELOPERS.md lists ours");

    private static ArchRule arrows(String name, String because, String... mayImport) {
        String[] allowed = Stream.concat(Stream.of(name), Arrays.stream(mayImport))
                .map(each -> "porebench." + each + "..")
                .toArray(String[]::new);
        return classes()
                .that()
                .resideInAPackage("porebench." + name + "..")
                .should()
                .onlyDependOnClassesThat(resideOutsideOfPackage("porebench..").or(resideInAnyPackage(allowed)))
                .allowEmptyShould(isUnwritten(name))
                .because(because);
    }

    private static ArchRule only(String name, String because, String... libraries) {
        return noClasses()
                .that()
                .resideOutsideOfPackage("porebench." + name + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(libraries)
                .because("porebench." + name + " alone may import this: " + because);
    }

    /** Says whether a package has no sources yet; a rule may be empty only for such a one. */
    static boolean isUnwritten(String name) {
        return Files.notExists(Path.of("src/main/java/porebench", name));
    }

    /** Leaves out the classes compiled beside this one, wherever the build puts them. */
    static final class MainClasses implements ImportOption {
        private static final String TESTS = ArchitectureTest.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toString();

        @Override
        public boolean includes(Location location) {
            return !location.asURI()
                    .toString()
                    .replaceFirst("^file:/+", "file:/")
                    .startsWith(TESTS);
        }
    }
}
