package porebench.print;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import porebench.evidence.CardState;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.FieldSheet;
import porebench.evidence.paper.PaperLanguage;
import porebench.evidence.paper.Printed;
import porebench.method.MeterType;
import porebench.port.OutputFile;
import porebench.port.OutputRefused;
import porebench.port.Paper;
import porebench.port.Waiting;
import porebench.record.book.Progress;

/** Writes cards, sheets and forms in all languages into a folder, to be looked at: {@code PaperShots FOLDER}. */
final class PaperShots {
    private PaperShots() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        for (String language : List.of("en-US", "es-ES", "es-MX", "fr", "de")) {
            Locale locale = Locale.forLanguageTag(language);
            for (Map.Entry<String, Printed> card : cards().entrySet()) {
                for (Paper paper : List.of(Paper.A6, Paper.CARD_4X6, Paper.HALF_LETTER, Paper.WALLET)) {
                    write(folder, card, paper, locale);
                }
            }
            for (CardSize size : CardSize.values()) {
                charts(folder, size, List.of(PaperLanguage.of(locale)), Optional.empty());
            }
            for (Map.Entry<String, Printed> card : plants().entrySet()) {
                for (Paper paper : List.of(Paper.A6, Paper.CARD_4X6, Paper.HALF_LETTER)) {
                    write(folder, card, paper, locale);
                }
            }
            for (Map.Entry<String, Printed> sheet : sheets().entrySet()) {
                write(folder, sheet, Paper.A4, locale);
            }
        }
        List<PaperLanguage> both = List.of(PaperLanguage.ENGLISH, PaperLanguage.SPANISH_SPAIN);
        for (CardSize size : List.of(CardSize.A6, CardSize.CARD_4X6, CardSize.HALF_LETTER)) {
            charts(folder, size, both, Optional.empty());
            charts(folder, size, List.of(PaperLanguage.ENGLISH), Optional.of(CardLook.Sheet.A4));
        }
    }

    /** Writes cards with a chart on their back: a usual one, one with a negative factor, a training card that lapsed. */
    private static void charts(
            Path folder, CardSize size, List<PaperLanguage> languages, Optional<CardLook.Sheet> sheet) {
        CardLook look = new CardLook(size, languages, sheet, CardLook.ALL, true);
        String name = "chart-" + look.form().replace(' ', '-') + "-"
                + languages.get(0).symbol() + ".pdf";
        List<FactorCard> cards = List.of(
                Cards.usual(),
                Cards.typeA(Cards.card("-0.35", "6.0", "1.5", "0.05", "10")),
                Cards.in(CardState.LAPSED, Cards.training("1.25", true)));
        OutputFile file = OutputFile.replacing(folder.resolve(name));
        try (Waiting waiting = Presses.PRESS.ready(cards, look, file, Progress.UNHEARD)) {
            waiting.release();
        } catch (OutputRefused refused) {
            System.out.println(name + ": " + refused.say(Locale.ENGLISH));
        }
    }

    private static void write(Path folder, Map.Entry<String, Printed> what, Paper paper, Locale locale) {
        String name = String.join("-", what.getKey(), paper.symbol(), locale.toLanguageTag()) + ".pdf";
        try {
            Presses.PRESS.write(what.getValue(), paper, locale, OutputFile.replacing(folder.resolve(name)));
        } catch (OutputRefused refused) {
            System.out.println(name + ": " + refused.say(Locale.ENGLISH));
        }
    }

    private static Map<String, Printed> plants() {
        return new TreeMap<>(Map.of(
                "plant1", Plants.usual(1),
                "plant5", Plants.usual(5),
                "plant12", Plants.usual(12),
                "plant30", Plants.usual(30),
                "plantAll", Plants.everything(),
                "plantLong", Plants.longNames(),
                "plantTraining", Plants.training()));
    }

    private static Map<String, Printed> cards() {
        return new TreeMap<>(Map.of(
                "usual", Cards.usual(),
                "typeA", Cards.typeA(Cards.usual()),
                "long", Cards.everythingLong("0.3", true),
                "longA", Cards.typeA(Cards.everythingLong("-0.35", true)),
                "training", Cards.training("0.3", true),
                "lapsed", Cards.in(CardState.LAPSED, Cards.usual()),
                "notYet", Cards.in(CardState.NOT_YET, Cards.typeA(Cards.usual())),
                "changedLong", Cards.in(CardState.EVIDENCE_CHANGED, Cards.everythingLong("0.3", true)),
                "trainingLapsed", Cards.in(CardState.NOT_VERIFIED, Cards.training("-0.35", true)),
                "doubts", Cards.takenOn(Cards.usual(), "checked the day after", "M. Ash", "R. Vale", "T. Oak")));
    }

    private static Map<String, Printed> sheets() {
        Map<String, Printed> all =
                new TreeMap<>(Map.of("readings", FieldLists.usual(30), "readingsLong", FieldLists.everythingLong(9)));
        all.putAll(Map.of(
                "sheetB", Sheets.usual(3),
                "sheetA", Sheets.typeA(3),
                "sheetLong", Sheets.everythingLong(6),
                "formA", Calibrations.form(MeterType.A),
                "formB", Calibrations.form(MeterType.B),
                "recordA", Calibrations.typeA(),
                "register", Registers.usual(20),
                "registerLong", Registers.everythingLong(9),
                "field-sheet", new FieldSheet(Cards.usual()),
                "plan", Plans.everythingLong(9)));
        all.putAll(Map.of(
                "recall", Recalls.usual(12),
                "recallLong", Recalls.everythingLong(6),
                "recallTruck", Recalls.ofTruck(),
                "recallTraining", Recalls.training()));
        return all;
    }
}
