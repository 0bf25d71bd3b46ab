package porebench.quantity;

/**
 * Units of temperature.
 *
 * <p>Source: NIST Special Publication 811 (2008 edition), appendix B: t/C = (t/F - 32) / 1.8.
 */
public enum TemperatureUnit implements Unit<Temperature> {
    CELSIUS("C") {
        @Override
        public Temperature of(double number) {
            return new Temperature(number);
        }

        @Override
        public double in(Temperature quantity) {
            return quantity.celsius();
        }
    },
    FAHRENHEIT("F") {
        @Override
        public Temperature of(double number) {
            return new Temperature((number - 32) / 1.8);
        }

        @Override
        public double in(Temperature quantity) {
            return quantity.celsius() * 1.8 + 32;
        }
    };

    private final String symbol;

    TemperatureUnit(String symbol) {
        this.symbol = symbol;
    }

    @Override
    public String symbol() {
        return symbol;
    }
}
