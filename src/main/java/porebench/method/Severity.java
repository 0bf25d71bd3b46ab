package porebench.method;

/** How much a problem weighs. */
public enum Severity {
    /** The input cannot be used until it is corrected. */
    ERROR,
    /** Suspicious but possible: a person may keep it with a reason. */
    WARNING
}
