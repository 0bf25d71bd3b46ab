package porebench.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the manual works by pencil is right: each sum comes out as it says, and each result in bold is what the program says below it. */
class PencilTest {
    /** Numbers, signs and brackets, an equals sign, and what comes out. */
    private static final Pattern SUM =
            Pattern.compile("((?:\\(|-?\\d[\\d.]*)[\\d.x+*/() -]*[x+*/-][\\d.x+*/() -]*) = \\**(-?\\d+(?:\\.\\d+)?)");

    private static final Pattern BOLD = Pattern.compile("\\*\\*(\\d+\\.?\\d*)[^*]*\\*\\*");

    static List<Page> pages() {
        return Page.all().stream()
                .filter(page -> page.file().getParent().equals(Page.FOLDER))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everySumComesOut(Page page) {
        for (String line : page.text().lines().toList()) {
            // A chain such as 400 / 94.25 = 4.24 is read from each of its parts.
            String rest = line.replaceAll("(?<=\\d) (?:kg|mL|L|%|g|t|m3)(?= (?:[x/+*-]|=))", "")
                    .replaceAll("\\bkg\\b", "");
            Matcher sums = SUM.matcher(rest);
            for (int from = 0; sums.find(from); from = sums.end(1)) {
                double worked = new Sum(sums.group(1)).value();
                String shown = sums.group(2);
                int decimals = shown.contains(".") ? shown.length() - shown.indexOf('.') - 1 : 0;
                assertThat(Math.abs(worked - Double.parseDouble(shown)))
                        .as("%s: %s = %s, worked %s", page, sums.group(1), shown, worked)
                        .isLessThanOrEqualTo(0.61 * Math.pow(10, -decimals));
            }
        }
    }

    @Test
    void thePagesThatWorkByPencilHaveSums() {
        long sums = pages().stream()
                .flatMap(page -> page.text().lines())
                .filter(line -> SUM.matcher(line).find())
                .count();
        assertThat(sums).isGreaterThan(15);
        assertThat(new Sum("(1000.0 - 965.3) / 965.3 x 100").value()).isBetween(3.59, 3.60);
        assertThat(new Sum("2 + 3 x 4 - (1 - 5)").value()).isEqualTo(18);
    }

    @Test
    void everyResultInBoldIsWhatTheProgramSays() {
        for (String name : List.of("weigh-out", "meters")) {
            Page page = Page.named(name);
            String said = page.blocks().stream()
                    .filter(block -> block.info().equals("console"))
                    .flatMap(block -> block.lines().stream())
                    .collect(Collectors.joining(" "));
            List<String> results = new ArrayList<>();
            BOLD.matcher(page.text()).results().forEach(found -> results.add(found.group(1)));
            results.removeIf(each -> each.length() < 3);
            assertThat(results)
                    .as(name)
                    .isNotEmpty()
                    .allSatisfy(result -> assertThat(said).contains(result));
        }
    }

    /** A sum in the writing of the manual: x for times. */
    private static final class Sum {
        private final String text;
        private int at;

        Sum(String text) {
            this.text = text.replace(" ", "");
        }

        double value() {
            double value = product();
            while (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
                value = text.charAt(at++) == '+' ? value + product() : value - product();
            }
            return value;
        }

        private double product() {
            double value = factor();
            while (at < text.length() && "x*/".indexOf(text.charAt(at)) >= 0) {
                value = text.charAt(at++) == '/' ? value / factor() : value * factor();
            }
            return value;
        }

        private double factor() {
            if (text.charAt(at) == '(') {
                at++;
                double value = value();
                at++;
                return value;
            }
            int from = at;
            at += text.charAt(at) == '-' ? 1 : 0;
            while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
                at++;
            }
            return Double.parseDouble(text.substring(from, at));
        }
    }
}
