package porebench.desk.frame.dialog;

import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.Seasons;
import porebench.method.Texts;

/** The figures of a profile as a person of one language reads and types them; they are kept with a point and English words. */
public final class FigureWords {
    private static final Set<String> SYMBOLS = Set.of("L", "%", "min", "m", "mL", "g", "t");

    private final Texts texts;
    private final char decimalSign;

    FigureWords(Texts texts) {
        this.texts = texts;
        this.decimalSign = DecimalFormatSymbols.getInstance(texts.locale()).getDecimalSeparator();
    }

    /** Returns a kept value as it is shown. */
    String show(FigureName name, String kept) {
        if (name.isDays()) {
            return kept.equals(Seasons.NONE) ? texts.get("choice.none") : kept;
        }
        if (name.words().isEmpty()) {
            return swapped(kept);
        }
        return name.words().contains(kept) ? texts.get("choice." + kept) : kept;
    }

    /** Returns what a person typed as it is kept; a number with another decimal sign stays one that is refused. */
    String keep(FigureName name, String typed) {
        String stripped = typed.strip();
        if (name.isDays()) {
            return stripped.equalsIgnoreCase(texts.get("choice.none")) ? Seasons.NONE : stripped;
        }
        if (name.words().isEmpty()) {
            return swapped(stripped);
        }
        return name.words().stream()
                .filter(word -> texts.get("choice." + word).equalsIgnoreCase(stripped))
                .findFirst()
                .orElse(stripped);
    }

    /** Puts the language's decimal sign for the point and the point for it, so that neither is taken for the other. */
    private String swapped(String number) {
        return decimalSign == '.'
                ? number
                : number.codePoints()
                        .mapToObj(sign ->
                                Character.toString(sign == '.' ? decimalSign : sign == decimalSign ? '.' : sign))
                        .collect(Collectors.joining());
    }

    /** Returns the unit of a number, or the words of a choice. */
    String unit(FigureName name) {
        if (!name.words().isEmpty()) {
            return choices(name, " / ");
        }
        return SYMBOLS.contains(name.unit())
                ? name.unit()
                : texts.get("unit." + name.unit().replace("%", "percent").replace(' ', '-'));
    }

    private String choices(FigureName name, String between) {
        return name.words().stream().map(word -> texts.get("choice." + word)).collect(Collectors.joining(between));
    }

    /** Says a problem of a figure by the words of the figure; its key means nothing to a reader. */
    Problem named(Problem problem) {
        Optional<FigureName> found = FigureName.ofKey(problem.field());
        if (found.isEmpty()) {
            return problem;
        }
        FigureName name = found.get();
        List<Object> values = new ArrayList<>(problem.values());
        values.set(0, texts.get(ProfileModel.wordsOf(name)));
        if (problem.kind() == Problem.Kind.NOT_A_CHOICE) {
            values.set(2, choices(name, ", "));
        } else if (problem.kind() == Problem.Kind.OUT_OF_RANGE) {
            values.set(1, show(name, String.valueOf(values.get(1))));
            if (!name.isDays()) {
                values.set(4, unit(name));
            }
        }
        return problem.naming(values);
    }
}
