package porebench.method;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import porebench.quantity.Require;

/**
 * The figures by which a laboratory works: those of a named standard, or its own copy with changed figures.
 *
 * <p>Every profile states every figure, each with its clause and how sure the source is; the laboratory's own current
 * standard decides.
 *
 * @param id short name in files and on the command line, such as {@code astm-c231}
 * @param title name for people, such as {@code ASTM C231/C231M}
 * @param edition the edition the figures are meant for, and how they were read
 * @param basedOn the profile a laboratory's own copy started from; empty for a named standard
 * @param figures every figure of {@link FigureName}
 */
public record Profile(
        String id, String title, String edition, Optional<String> basedOn, Map<FigureName, Figure> figures) {
    public Profile {
        Require.notBlank("id", id);
        Require.notBlank("title", title);
        List<Problem> problems = check(figures);
        if (Problem.anyError(problems)) {
            throw new IllegalArgumentException("figures must be complete and in range, but is " + problems);
        }
        figures = Map.copyOf(figures);
    }

    /** Returns what is missing or out of range among some figures. */
    public static List<Problem> check(Map<FigureName, Figure> figures) {
        List<Problem> problems = new ArrayList<>();
        for (FigureName name : FigureName.values()) {
            Optional.ofNullable(figures.get(name))
                    .map(figure -> name.check(figure.value()))
                    .orElseGet(() -> Optional.of(Problem.error(name.symbol(), "profile.figure-missing", name.symbol())))
                    .ifPresent(problems::add);
        }
        return problems;
    }

    /** Returns one figure with its clause. */
    public Figure figure(FigureName name) {
        return Objects.requireNonNull(figures.get(name));
    }

    /**
     * Returns a figure that is a number, in the unit of its name.
     *
     * @throws NumberFormatException if the figure is a choice
     */
    public double number(FigureName name) {
        return new BigDecimal(figure(name).value()).doubleValue();
    }

    /**
     * Returns a figure that is a whole number.
     *
     * @throws ArithmeticException if the figure may have a fraction and has one
     */
    public int count(FigureName name) {
        return new BigDecimal(figure(name).value()).intValueExact();
    }

    /** Returns the days of the year on which a season begins, by which factors are rechecked. */
    public Seasons seasons() {
        return Seasons.parse(figure(FigureName.RECHECK_SEASONS).value()).orElseThrow();
    }

    /** Returns how a factor is rounded when it is reported. */
    public RoundingRule factorRounding() {
        return rule(FigureName.FACTOR_STEP, FigureName.FACTOR_TIES);
    }

    /** Returns how an air content is rounded when it is reported, high air apart. */
    public RoundingRule airRounding() {
        return rule(FigureName.AIR_STEP, FigureName.AIR_TIES);
    }

    /** Returns whether the rounded factor is carried forward into the air content. */
    public boolean carriesRoundedFactor() {
        return figure(FigureName.CARRY_ROUNDED_FACTOR).value().equals("yes");
    }

    /**
     * Returns this laboratory's own copy with one figure changed; a named standard is copied by {@link #copyAs} first.
     *
     * @throws IllegalArgumentException if this is a named standard, or the value does not fit the figure
     */
    public Profile with(FigureName name, Figure changed) {
        if (basedOn.isEmpty()) {
            throw new IllegalArgumentException("id must be that of a laboratory's own copy, but is " + id);
        }
        Map<FigureName, Figure> all = new EnumMap<>(figures);
        all.put(name, changed);
        return new Profile(id, title, edition, basedOn, all);
    }

    /**
     * Returns a copy of this profile under a laboratory's own name.
     *
     * @throws IllegalArgumentException if the name is blank or this profile's own
     */
    public Profile copyAs(String ownId, String ownTitle) {
        if (ownId.equals(id)) {
            throw new IllegalArgumentException("ownId must differ from the profile it is copied from, but is " + ownId);
        }
        return new Profile(ownId, ownTitle, edition, Optional.of(id), figures);
    }

    private RoundingRule rule(FigureName step, FigureName ties) {
        String word = figure(ties).value();
        Ties rule = List.of(Ties.values()).stream()
                .filter(t -> t.symbol().equals(word))
                .findFirst()
                .orElseThrow();
        return new RoundingRule(
                new BigDecimal(figure(step).value()), rule, figure(step).clause());
    }
}
