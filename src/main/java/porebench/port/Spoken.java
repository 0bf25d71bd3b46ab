package porebench.port;

import java.util.Locale;

/** A failure of the world outside that can say itself to a person in a language; its own message is for the log. */
public interface Spoken {
    /** Says what was being done and what is safe. */
    String say(Locale locale);
}
