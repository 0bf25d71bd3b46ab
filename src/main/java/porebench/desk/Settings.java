package porebench.desk;

import java.util.HashMap;
import java.util.Map;
import java.util.prefs.Preferences;

/** What the window remembers of one person from one day to the next; no record of the laboratory is among it. */
public interface Settings {
    /** Returns what is remembered under a key, or something else when nothing is. */
    String get(String key, String otherwise);

    /** Remembers a text of at most 8000 characters. */
    void put(String key, String value);

    /** Remembers until the program ends. */
    static Settings inMemory() {
        Map<String, String> remembered = new HashMap<>();
        return new Settings() {
            @Override
            public String get(String key, String otherwise) {
                return remembered.getOrDefault(key, otherwise);
            }

            @Override
            public void put(String key, String value) {
                remembered.put(key, value);
            }
        };
    }

    /** Remembers where the system keeps the preferences of the person who is logged in. */
    static Settings ofUser() {
        Preferences node = Preferences.userRoot().node("porebench");
        return new Settings() {
            @Override
            public String get(String key, String otherwise) {
                return node.get(key, otherwise);
            }

            @Override
            public void put(String key, String value) {
                if (value.length() <= Preferences.MAX_VALUE_LENGTH) {
                    node.put(key, value);
                }
            }
        };
    }
}
