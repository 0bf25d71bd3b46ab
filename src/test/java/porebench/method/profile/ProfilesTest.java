package porebench.method.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.RoundingRule;
import porebench.method.Said;
import porebench.method.Ties;

/** The profiles of named standards, and a laboratory's own copies of them. */
class ProfilesTest {
    private static final Path FOLDER = Path.of("src", "main", "resources", "porebench", "method", "profile");

    static List<Profile> named() {
        return Profiles.named();
    }

    private static Figure ours(String value) {
        return new Figure(value, "our quality manual", Mark.LABORATORY);
    }

    private static Profile own() {
        return Profiles.standard().copyAs("our-c231", "Our C231");
    }

    @Test
    void hasTheFourNamedStandardsTheDefaultFirst() {
        assertThat(Profiles.named().stream().map(Profile::id))
                .containsExactly("astm-c231", "aashto-t152", "en-12350-7", "jis-a1128");
        assertThat(Profiles.named().stream().map(Profile::title))
                .containsExactly("ASTM C231/C231M", "AASHTO T 152", "EN 12350-7", "JIS A 1128");
        assertThat(Profiles.standard().id()).isEqualTo(Profiles.DEFAULT_ID);
        assertThat(Profiles.find("jis-a1128").map(Profile::title)).contains("JIS A 1128");
        assertThat(Profiles.find("ours")).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("named")
    void statesEveryFigureWithItsClauseAndMark(Profile profile) {
        assertThat(profile.figures()).containsOnlyKeys(FigureName.values());
        assertThat(profile.edition()).isNotBlank();
        assertThat(profile.basedOn()).isEmpty();
        for (FigureName name : FigureName.values()) {
            Figure figure = profile.figure(name);
            assertThat(name.check(figure.value())).as(name.symbol()).isEmpty();
            // A clause is more than a word: it says where or why.
            assertThat(figure.clause()).as(name.symbol()).contains(" ");
            if (name.words().isEmpty() && !name.isDays()) {
                assertThat(profile.number(name)).isEqualTo(Double.parseDouble(figure.value()));
            }
        }
    }

    @Test
    void readsEveryProfileThatIsShippedAndNothingInItIsLeftUnread() throws IOException {
        Set<String> known = Stream.concat(
                        Stream.of("title", "edition"),
                        Arrays.stream(FigureName.values()).map(FigureName::symbol))
                .collect(Collectors.toSet());
        List<Path> files;
        try (Stream<Path> all = Files.list(FOLDER)) {
            // A language behind the name marks the words of a profile, which TranslationsTest looks after.
            files = all.filter(file -> !file.getFileName().toString().contains("_"))
                    .sorted()
                    .toList();
        }
        assertThat(files.stream().map(file -> file.getFileName().toString().replace(".properties", "")))
                .containsExactlyInAnyOrderElementsOf(
                        Profiles.named().stream().map(Profile::id).toList());
        for (Path file : files) {
            Properties data = new Properties();
            try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                data.load(reader);
            }
            assertThat(data.stringPropertyNames()).as(file.toString()).isEqualTo(known);
        }
    }

    /**
     * The figures that differ between the standards. C231 and T 152: half a division when the reading is above 8 %, bowl of
     * 6.0 L (recalled); E29 ties as a state laboratory manual of 2014 asks (seen). EN and JIS: bowl of 5 L, 0.1 % (seen).
     */
    @Test
    void keepsTheStandardsApart() {
        for (Profile american :
                List.of(Profiles.named().get(0), Profiles.named().get(1))) {
            assertThat(american.figure(FigureName.HIGH_AIR_LOOKS_AT).value()).isEqualTo("reading");
            assertThat(american.number(FigureName.HIGH_AIR_ABOVE)).isEqualTo(8);
            assertThat(american.number(FigureName.LEAST_BOWL)).isEqualTo(6);
            assertThat(american.airRounding().ties()).isEqualTo(Ties.TO_EVEN);
        }
        for (Profile other : List.of(Profiles.named().get(2), Profiles.named().get(3))) {
            assertThat(other.figure(FigureName.HIGH_AIR_LOOKS_AT).value()).isEqualTo("never");
            assertThat(other.number(FigureName.LEAST_BOWL)).isEqualTo(5);
            assertThat(other.airRounding().step()).isEqualByComparingTo("0.1");
        }
        // EN 12350-7 (recalled): r = 0.4 % at 5.6 % air; r is 2.8 standard deviations, 0.4 / 2.8 = 0.14.
        assertThat(Profiles.find("en-12350-7").orElseThrow().number(FigureName.REPEATABILITY))
                .isEqualTo(0.14);
        // C231 (recalled): multi-operator s 0.28 % of Type A. EN (recalled): R = 1.3 % is 2.8 of them, 1.3 / 2.8 =
        // 0.464.
        assertThat(Profiles.standard().number(FigureName.FIELD_SCATTER)).isEqualTo(0.28);
        assertThat(Profiles.find("en-12350-7").orElseThrow().number(FigureName.FIELD_SCATTER))
                .isEqualTo(0.46);
        // Kansas KT-18 (seen): the volumetric test at 0.8 % or more.
        assertThat(Profiles.named()).allMatch(profile -> profile.number(FigureName.ADVISE_VOLUMETRIC_FROM) == 0.8);
    }

    /**
     * The figures of meters and bowls: shape 0.75 to 1.25 (JIS A 1128, seen), leak half a mark (a state T 152 checklist of
     * 2001, seen), dial 0.1 %, D 0.1 %, 183 m (ASTM C231, recalled), 3 months (C231, seen in a secondary page), yearly bowls
     * (Iowa I.M. 318, seen).
     */
    @ParameterizedTest
    @MethodSource("named")
    void statesWhenAMeterIsToBeTrusted(Profile profile) {
        assertThat(profile.number(FigureName.BOWL_SHAPE_LOW)).isEqualTo(0.75);
        assertThat(profile.number(FigureName.BOWL_SHAPE_HIGH)).isEqualTo(1.25);
        assertThat(profile.number(FigureName.LEAK_MARKS)).isEqualTo(0.5);
        assertThat(profile.number(FigureName.DIAL_TOLERANCE)).isEqualTo(0.1);
        assertThat(profile.number(FigureName.EXPANSION_LIMIT)).isEqualTo(0.1);
        assertThat(profile.number(FigureName.ELEVATION_LIMIT)).isEqualTo(183);
        assertThat(profile.count(FigureName.CALIBRATION_MONTHS)).isEqualTo(3);
        assertThat(profile.count(FigureName.BOWL_MONTHS)).isEqualTo(12);
    }

    @Test
    void givesItsRoundingRulesWithTheirClause() {
        Profile profile = own().with(FigureName.FACTOR_STEP, new Figure("0.05", "our clause 3", Mark.LABORATORY))
                .with(FigureName.FACTOR_TIES, ours("away"));
        assertThat(profile.factorRounding())
                .isEqualTo(new RoundingRule(new BigDecimal("0.05"), Ties.AWAY_FROM_ZERO, "our clause 3"));
        assertThat(profile.airRounding().ties()).isEqualTo(Ties.TO_EVEN);
        assertThat(profile.airRounding().step()).isEqualByComparingTo("0.1");
    }

    @Test
    void copiesAsTheLaboratorysOwnAndChangesThat() {
        Profile changed = own().with(FigureName.CARRY_ROUNDED_FACTOR, ours("yes"))
                .with(FigureName.LEAST_TRIALS, ours("5"))
                .with(FigureName.MASS_TOLERANCE, ours("0.5"));
        assertThat(changed.id()).isEqualTo("our-c231");
        assertThat(changed.title()).isEqualTo("Our C231");
        assertThat(changed.basedOn()).isEqualTo(Optional.of("astm-c231"));
        assertThat(changed.carriesRoundedFactor()).isTrue();
        assertThat(changed.count(FigureName.LEAST_TRIALS)).isEqualTo(5);
        assertThat(changed.number(FigureName.MASS_TOLERANCE)).isEqualTo(0.5);
        assertThat(changed.figure(FigureName.AIR_STEP)).isEqualTo(own().figure(FigureName.AIR_STEP));
        assertThat(Profiles.standard().carriesRoundedFactor()).isFalse();
    }

    @Test
    void refusesToChangeANamedStandardOrToCopyUnderItsName() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Profiles.standard().with(FigureName.AIR_STEP, ours("0.5")))
                .withMessage("id must be that of a laboratory's own copy, but is astm-c231");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Profiles.standard().copyAs("astm-c231", "Ours"))
                .withMessage("ownId must differ from the profile it is copied from, but is astm-c231");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Profiles.standard().copyAs(" ", "Ours"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Profiles.standard().copyAs("ours", ""));
    }

    @Test
    void namesEveryFigureThatIsMissingOrOutOfRangeAtOnce() {
        Map<FigureName, Figure> figures = new EnumMap<>(Profiles.standard().figures());
        figures.remove(FigureName.SCALE_TOP);
        figures.put(FigureName.AIR_STEP, ours("0"));
        figures.put(FigureName.AIR_TIES, ours("odd"));
        List<Problem> problems = Profile.check(figures);
        assertThat(Said.codes(problems))
                .containsExactly("profile.out-of-range", "profile.not-a-choice", "profile.figure-missing");
        assertThat(problems.stream().map(Problem::field)).containsExactly("air-step", "air-ties", "scale-top");
        assertThat(Said.text(problems.get(2)))
                .isEqualTo("The profile does not state scale-top. Add the figure " + "to the profile.");
        assertThat(Profile.check(Profiles.standard().figures())).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Profile("x", "X", "", Optional.empty(), figures))
                .withMessageStartingWith("figures must be complete and in range, but is ");
        assertThatIllegalArgumentException().isThrownBy(() -> own().with(FigureName.AIR_STEP, ours("2")));
    }

    @Test
    void givesATypedNumberWithBlanksAroundIt() {
        assertThat(own().with(FigureName.SCALE_TOP, ours(" 9 ")).number(FigureName.SCALE_TOP))
                .isEqualTo(9);
    }

    @Test
    void saysHowSureAFigureIsInAWord() {
        assertThat(Arrays.stream(Mark.values()).map(Mark::symbol))
                .containsExactly("seen", "recalled", "derived", "laboratory");
    }

    /** What a slip in a shipped file is called; each starts from a sound file with one line spoilt. */
    @ParameterizedTest
    @CsvSource({
        "'scale-top = 10 | laboratory', 'x: scale-top must be written value | mark | clause, but is \"10 | laboratory\"'",
        "'scale-top = ', 'x: scale-top must be written value | mark | clause, but is \"\"'",
        "'scale-top = 10 | guessed | a clause', 'x: the mark of scale-top must be one of the four, but is \"guessed\"'",
        "'scale-top = 10 | seen | ', 'clause must not be blank, but is \"\"'",
        "'title = ', 'title must not be blank, but is \"\"'"
    })
    void saysWhatIsWrongInAFile(String line, String words) throws IOException {
        String sound = Files.readString(FOLDER.resolve("jis-a1128.properties"), StandardCharsets.UTF_8);
        assertThat(Profiles.parse("jis-a1128", new StringReader(sound)))
                .isEqualTo(Profiles.find("jis-a1128").orElseThrow());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Profiles.parse("x", new StringReader(sound + "\n" + line)))
                .withMessage(words);
    }

    /** A clause may hold the sign that parts the three. */
    @Test
    void keepsASeparatorWithinAClause() throws IOException {
        String sound = Files.readString(FOLDER.resolve("jis-a1128.properties"), StandardCharsets.UTF_8);
        Profile profile = Profiles.parse("x", new StringReader(sound + "\nscale-top = 9 | seen | clause 3 | note 2"));
        assertThat(profile.figure(FigureName.SCALE_TOP)).isEqualTo(new Figure("9", "clause 3 | note 2", Mark.SEEN));
    }

    @Test
    void refusesAProfileThatDoesNotCome() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Profiles.read("no-such-profile"))
                .withMessage("id must be a profile that comes with the program, but is no-such-profile");
    }

    /** What a profile takes from another body than its own standard's is the laboratory's choice, and says after whom. */
    @Test
    void figuresOfOthersAreTheLaboratorysChoice() {
        Map<String, String> own = Map.of(
                "astm-c231", "C231|ASTM C94|ASTM E29",
                "aashto-t152", "T 152",
                "en-12350-7", "EN 12350",
                "jis-a1128", "JIS");
        String others = "ASTM|ACI|AASHTO|C231|T 152|EN 12350|JIS|Kansas|Iowa|[Ss]tate ";
        for (Profile profile : Profiles.named()) {
            Pattern owns = Pattern.compile(own.get(profile.id()));
            profile.figures().forEach((name, figure) -> {
                boolean isOfOthers =
                        Pattern.compile(others).matcher(figure.clause()).find()
                                && !owns.matcher(figure.clause()).find();
                boolean isOfAnAgency = figure.clause().contains("Kansas")
                        || figure.clause().contains("Iowa")
                        || figure.clause().contains("tate checklist");
                if (isOfOthers || isOfAnAgency) {
                    assertThat(figure.mark())
                            .as("%s of %s: %s", name.symbol(), profile.id(), figure.clause())
                            .isEqualTo(Mark.LABORATORY);
                }
            });
        }
        assertThat(Profiles.find("en-12350-7")
                        .orElseThrow()
                        .figure(FigureName.ADVISE_VOLUMETRIC_FROM)
                        .clause())
                .startsWith("Laboratory's choice, after Kansas KT-18");
    }
}
