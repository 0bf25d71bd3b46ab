package porebench.command.reply;

/** What a command has to say, for programs and for people. */
public interface Report {
    /** Writes the fields of the answer; the problems are added by the caller. */
    void json(JsonFields json);

    /** Writes the answer for people, with units. */
    void text(TextPage page);
}
