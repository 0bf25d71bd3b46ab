package porebench.desk.form;

import java.util.List;
import java.util.Set;
import porebench.port.Paper;
import porebench.quantity.DensityUnit;
import porebench.quantity.LengthUnit;
import porebench.quantity.MassUnit;
import porebench.quantity.PressureUnit;
import porebench.quantity.TemperatureUnit;
import porebench.quantity.VolumeUnit;
import porebench.record.column.Column;
import porebench.record.column.FixedUnit;

/** The units in which the workbench shows quantities and offers to take them; what was typed keeps its own unit. */
public enum UnitSystem {
    SI(
            MassUnit.KILOGRAM,
            MassUnit.GRAM,
            VolumeUnit.CUBIC_METRE,
            VolumeUnit.LITRE,
            DensityUnit.KILOGRAM_PER_CUBIC_METRE,
            TemperatureUnit.CELSIUS,
            PressureUnit.KILOPASCAL),
    US(
            MassUnit.POUND,
            MassUnit.POUND,
            VolumeUnit.CUBIC_YARD,
            VolumeUnit.CUBIC_FOOT,
            DensityUnit.POUND_PER_CUBIC_FOOT,
            TemperatureUnit.FAHRENHEIT,
            PressureUnit.POUND_PER_SQUARE_INCH);

    private static final Set<String> US_UNITS = Set.of("F", "psi", "in", "ft");

    private final MassUnit batchMass;
    private final MassUnit benchMass;
    private final VolumeUnit batchVolume;
    private final VolumeUnit bowlVolume;
    private final DensityUnit density;
    private final TemperatureUnit temperature;
    private final PressureUnit pressure;

    UnitSystem(
            MassUnit batchMass,
            MassUnit benchMass,
            VolumeUnit batchVolume,
            VolumeUnit bowlVolume,
            DensityUnit density,
            TemperatureUnit temperature,
            PressureUnit pressure) {
        this.batchMass = batchMass;
        this.benchMass = benchMass;
        this.batchVolume = batchVolume;
        this.bowlVolume = bowlVolume;
        this.density = density;
        this.temperature = temperature;
        this.pressure = pressure;
    }

    /** Returns the unit of masses in a batch of concrete. */
    public MassUnit batchMass() {
        return batchMass;
    }

    /** Returns the unit of masses weighed at the bench. */
    public MassUnit benchMass() {
        return benchMass;
    }

    /** Returns the unit of a batch's volume. */
    public VolumeUnit batchVolume() {
        return batchVolume;
    }

    /** Returns the unit of a bowl's volume. */
    public VolumeUnit bowlVolume() {
        return bowlVolume;
    }

    /** Returns the unit of densities. */
    public DensityUnit density() {
        return density;
    }

    /** Returns the unit of temperatures. */
    public TemperatureUnit temperature() {
        return temperature;
    }

    /** Returns the unit of pressures. */
    public PressureUnit pressure() {
        return pressure;
    }

    /** Returns the unit in which a column is offered that keeps plain numbers in one unit. */
    public String unitOf(Column<?, ?> column) {
        List<String> symbols = FixedUnit.of(column).map(FixedUnit::symbols).orElse(List.of(""));
        return symbols.stream()
                .filter(symbol -> this == US && US_UNITS.contains(symbol))
                .findFirst()
                .orElse(symbols.get(0));
    }

    /** Returns the unit of heights above the sea. */
    public LengthUnit elevation() {
        return this == US ? LengthUnit.FOOT : LengthUnit.METRE;
    }

    /** Returns the paper that lies in the printers of those who use it. */
    public Paper sheet() {
        return this == US ? Paper.LETTER : Paper.A4;
    }

    /** Returns the other system. */
    public UnitSystem other() {
        return this == SI ? US : SI;
    }
}
