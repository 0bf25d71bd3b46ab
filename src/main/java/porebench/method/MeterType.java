package porebench.method;

/** The two kinds of pressure air meter. */
public enum MeterType {
    /** Water column over the sample: the level falls under pressure and rises again. */
    A,
    /** Closed air chamber released into the bowl: a dial shows the air. */
    B
}
