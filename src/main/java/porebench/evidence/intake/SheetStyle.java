package porebench.evidence.intake;

import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.Optional;
import porebench.quantity.Symbolic;
import porebench.quantity.Typed;

/**
 * How a file of records is written: what stands between its columns, and its decimal sign. Nobody guesses it: a file is read as
 * documented unless a person says otherwise.
 *
 * @param apart what stands between the columns
 * @param decimal the decimal sign
 * @param zone the laboratory's time zone, by which a moment that states how far it is from UTC is told by the laboratory's clock; empty
 *     where no such moment is taken
 */
public record SheetStyle(Apart apart, Decimal decimal, Optional<ZoneId> zone) {
    /** As the formats are documented. */
    public static final SheetStyle DOCUMENTED = new SheetStyle(Apart.COMMA, Decimal.POINT);

    /** A style in which no moment states how far it is from UTC. */
    public SheetStyle(Apart apart, Decimal decimal) {
        this(apart, decimal, Optional.empty());
    }

    /** Returns the same style for the clock of a laboratory. */
    public SheetStyle in(ZoneId laboratory) {
        return new SheetStyle(apart, decimal, Optional.of(laboratory));
    }

    /** What stands between the columns. */
    public enum Apart implements Symbolic {
        COMMA(','),
        SEMICOLON(';'),
        TAB('\t');

        private final char sign;

        Apart(char sign) {
            this.sign = sign;
        }

        /** Returns the character. */
        public char sign() {
            return sign;
        }
    }

    /** What stands before the decimals of a number; nothing ever stands between its thousands. */
    public enum Decimal implements Symbolic {
        POINT {
            @Override
            public Optional<BigDecimal> parse(String text) {
                return Typed.parseNumber(text);
            }
        },
        COMMA {
            /** A point is refused: nobody can tell whether it parts thousands. */
            @Override
            public Optional<BigDecimal> parse(String text) {
                return text.indexOf('.') >= 0 ? Optional.empty() : Typed.parseNumber(text.replace(',', '.'));
            }
        };

        /** Returns the number of a text, its digits as typed; empty when it is none. */
        public abstract Optional<BigDecimal> parse(String text);
    }
}
