package porebench.print.phone;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import porebench.command.JsonReading;

/** A headless Chromium with one tab of a phone's width, driven over its DevTools protocol; nothing outside can be reached by name. */
final class Browser implements AutoCloseable {
    private static final int SECONDS = 60;

    private final Process process;
    private final WebSocket socket;
    private final LinkedBlockingQueue<Map<String, Object>> heard = new LinkedBlockingQueue<>();
    private final List<Map<String, Object>> events = new ArrayList<>();
    private String session = "";
    private int last;

    private final class Ear implements WebSocket.Listener {
        private final StringBuilder message = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean whole) {
            message.append(part);
            if (whole) {
                heard.add(JsonReading.object(message.toString()));
                message.setLength(0);
            }
            from.request(1);
            return null;
        }
    }

    /** Starts a browser that keeps its profile in a folder. */
    Browser(Path folder) throws Exception {
        process = new ProcessBuilder(
                        "chromium",
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-dev-shm-usage",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + folder,
                        "about:blank")
                .redirectErrorStream(true)
                .start();
        socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(URI.create(address()), new Ear())
                .get(SECONDS, TimeUnit.SECONDS);
        String target = text(call("Target.createTarget", "{\"url\":\"about:blank\"}"), "targetId");
        session =
                text(call("Target.attachToTarget", "{\"targetId\":\"" + target + "\",\"flatten\":true}"), "sessionId");
        call("Page.enable", "{}");
        call("Network.enable", "{}");
        call("Runtime.enable", "{}");
        call("Log.enable", "{}");
        call(
                "Emulation.setDeviceMetricsOverride",
                "{\"width\":360,\"height\":740,\"deviceScaleFactor\":2,\"mobile\":true}");
    }

    /** Chromium says on its error stream where it listens. */
    private String address() throws IOException {
        String line;
        StringBuilder said = new StringBuilder();
        BufferedReader reader = process.inputReader();
        while ((line = reader.readLine()) != null) {
            said.append(line).append('\n');
            int at = line.indexOf("ws://");
            if (at >= 0) {
                Thread rest = new Thread(() -> reader.lines().forEach(each -> {}));
                rest.setDaemon(true);
                rest.start();
                return line.substring(at).strip();
            }
        }
        throw new IOException("chromium did not start: " + said);
    }

    /** Makes the clock of pages opened from now on stand at a moment of their own zone, such as {@code 2026-11-25T12:00:00}. */
    void clock(String local) {
        call("Page.addScriptToEvaluateOnNewDocument", "{\"source\":" + quoted("""
                (() => { const real = Date; const at = new real('%s').getTime();
                window.Date = class extends real { constructor(...a) { if (a.length) super(...a); else super(at); }
                static now() { return at; } }; })();
                """.formatted(local)) + "}");
    }

    /** Opens a file and waits until it is loaded. */
    void open(Path file) {
        events.clear();
        call("Page.navigate", "{\"url\":" + quoted(file.toUri().toString()) + "}");
        await(event -> text(event, "method").equals("Page.loadEventFired"));
    }

    /** Evaluates an expression in the page, awaiting a promise; returns its value as text. */
    String ask(String expression) {
        Map<String, Object> answer = call(
                "Runtime.evaluate",
                "{\"awaitPromise\":true,\"returnByValue\":true,\"expression\":"
                        + quoted("Promise.resolve(" + expression + ").then(String)") + "}");
        if (answer.containsKey("exceptionDetails")) {
            throw new AssertionError(expression + ": " + answer);
        }
        return text(part(answer, "result"), "value");
    }

    /** Presses the button of an id where it lies on the glass, as a finger does. */
    void press(String id) {
        String[] place = ask("(() => { const e = document.getElementById('" + id
                        + "'); e.scrollIntoView({block:'center'}); const r = e.getBoundingClientRect();"
                        + " return (r.left + r.width / 2) + ' ' + (r.top + r.height / 2); })()")
                .split(" ");
        for (String kind : List.of("mousePressed", "mouseReleased")) {
            call(
                    "Input.dispatchMouseEvent",
                    String.format(
                            Locale.ROOT,
                            "{\"type\":\"%s\",\"x\":%s,\"y\":%s,\"button\":\"left\",\"clickCount\":1}",
                            kind,
                            place[0],
                            place[1]));
        }
    }

    /** Presses the keys of a number on the page's own pad. */
    void type(String number) {
        for (char digit : number.toCharArray()) {
            press("key-" + (digit == '.' ? "point" : digit));
        }
    }

    /** Writes a text into the field of an id by the phone's own keyboard. */
    void write(String id, String text) {
        press(id);
        call("Input.insertText", "{\"text\":" + quoted(text) + "}");
    }

    /** Returns the addresses that the tab asked for since a page was opened. */
    List<String> requests() {
        drain();
        return events.stream()
                .filter(event -> text(event, "method").equals("Network.requestWillBeSent"))
                .map(event -> text(part(part(event, "params"), "request"), "url"))
                .toList();
    }

    /** Returns what the tab complained of since a page was opened. */
    List<String> complaints() {
        drain();
        return events.stream()
                .filter(event ->
                        List.of("Runtime.exceptionThrown", "Log.entryAdded").contains(text(event, "method")))
                .map(event -> event.toString())
                .toList();
    }

    /** Makes downloads go to a folder. */
    void downloadTo(Path folder) {
        String before = session;
        session = "";
        call(
                "Browser.setDownloadBehavior",
                "{\"behavior\":\"allow\",\"eventsEnabled\":true,\"downloadPath\":" + quoted(folder.toString()) + "}");
        session = before;
    }

    void awaitDownload() {
        await(event -> text(event, "method").equals("Browser.downloadProgress")
                && text(part(event, "params"), "state").equals("completed"));
    }

    /** Writes what is on the glass, the whole page, to a picture. */
    void photograph(Path file) throws IOException {
        String height = ask("document.documentElement.scrollHeight");
        String shot = text(
                call(
                        "Page.captureScreenshot",
                        "{\"captureBeyondViewport\":true,\"clip\":{\"x\":0,\"y\":0,\"width\":360,\"height\":" + height
                                + ",\"scale\":1}}"),
                "data");
        Files.write(file, Base64.getDecoder().decode(shot));
    }

    Map<String, Object> call(String method, String values) {
        int id = ++last;
        String tab = session.isEmpty() ? "" : ",\"sessionId\":\"" + session + "\"";
        socket.sendText("{\"id\":" + id + tab + ",\"method\":\"" + method + "\",\"params\":" + values + "}", true)
                .join();
        Map<String, Object> answer =
                await(message -> String.valueOf(message.get("id")).equals(Integer.toString(id)));
        if (answer.containsKey("error")) {
            throw new AssertionError(method + ": " + answer.get("error"));
        }
        return part(answer, "result");
    }

    private Map<String, Object> await(Predicate<Map<String, Object>> wanted) {
        Optional<Map<String, Object>> known = events.stream().filter(wanted).findFirst();
        if (known.isPresent()) {
            return known.get();
        }
        try {
            while (true) {
                Map<String, Object> next = heard.poll(SECONDS, TimeUnit.SECONDS);
                if (next == null) {
                    throw new AssertionError("the browser did not answer in " + SECONDS + " s");
                }
                if (next.containsKey("method")) {
                    events.add(next);
                }
                if (wanted.test(next)) {
                    return next;
                }
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(stopped);
        }
    }

    /** Whatever was said before an answer has come before it. */
    private void drain() {
        call("Runtime.evaluate", "{\"expression\":\"1\"}");
    }

    private static String text(Map<String, Object> from, String name) {
        return String.valueOf(from.get(name));
    }

    @SuppressWarnings("unchecked") // a JSON object is read as a map
    private static Map<String, Object> part(Map<String, Object> from, String name) {
        return (Map<String, Object>) from.get(name);
    }

    static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.chars()
                .forEach(letter -> quoted.append(
                        letter == '"' || letter == '\\' || letter < ' '
                                ? String.format(Locale.ROOT, "\\u%04x", letter)
                                : String.valueOf((char) letter)));
        return quoted.append('"').toString();
    }

    @Override
    public void close() throws Exception {
        session = "";
        try {
            call("Browser.close", "{}");
        } catch (RuntimeException | AssertionError gone) {
            // It may be gone before it answers.
        }
        if (!process.waitFor(20, TimeUnit.SECONDS)) {
            process.destroyForcibly().waitFor();
        }
    }
}
