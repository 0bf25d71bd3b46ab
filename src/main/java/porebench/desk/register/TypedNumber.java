package porebench.desk.register;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.method.Limit;
import porebench.method.Problem;

/**
 * Reads a number field of a form and writes down what is wrong with it.
 *
 * @param numbers numbers as the person types them
 * @param problems takes the problems
 */
record TypedNumber(Numbers numbers, List<Problem> problems) {
    /** Reads a field that may be empty; empty also when it cannot be read. */
    Optional<BigDecimal> optional(String field, String words, String typed, String low, String high) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        Optional<BigDecimal> number = numbers.parse(typed);
        if (number.isEmpty()) {
            problems.add(Problem.error(field, "form.not-a-number", words, typed.strip()));
            return Optional.empty();
        }
        boolean fits =
                number.get().compareTo(new BigDecimal(low)) >= 0 && number.get().compareTo(new BigDecimal(high)) <= 0;
        if (!fits) {
            problems.add(Problem.error(
                    field, "form.out-of-range", words, number.get(), new BigDecimal(low), new BigDecimal(high)));
            return Optional.empty();
        }
        return number;
    }

    /** Reads a field that may be empty, within what its quantity can be. */
    Optional<BigDecimal> optional(String field, String words, String typed, Limit limit) {
        return optional(
                field,
                words,
                typed,
                limit.lowInclusive().toPlainString(),
                limit.highInclusive().toPlainString());
    }

    /** Reads a field that must be filled in, within what its quantity can be. */
    Optional<BigDecimal> required(String field, String words, String typed, Limit limit) {
        return required(
                field,
                words,
                typed,
                limit.lowInclusive().toPlainString(),
                limit.highInclusive().toPlainString());
    }

    /** Reads a field that must be filled in. */
    Optional<BigDecimal> required(String field, String words, String typed, String low, String high) {
        if (typed.isBlank()) {
            problems.add(Problem.error(field, "form.required", words));
        }
        return optional(field, words, typed, low, high);
    }

    /** Reads a text that must be filled in. */
    void requireText(String field, String words, String typed) {
        if (typed.isBlank()) {
            problems.add(Problem.error(field, "form.required", words));
        }
    }
}
