package quarterlight;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/**
 * A real browser without a window, for pages that the program makes: Chromium, steered by its DevTools protocol. Where none is installed, a test that asks for it is
 * skipped and says so.
 */
public final class Browser implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");

    private final Process process;
    private final WebSocket socket;
    private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
    private final AtomicInteger number = new AtomicInteger();

    private Browser(Process process, String address) {
        this.process = process;
        this.socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(URI.create(address), new Answers())
                .join();
    }

    /** Starts one; the test is skipped where there is none. */
    public static Browser start(Path profile) throws IOException {
        Optional<Path> program = program();
        assumeTrue(program.isPresent(), "no chromium is installed, so the page was not opened in a browser");
        Process process = new ProcessBuilder(
                        program.orElseThrow().toString(),
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--no-first-run",
                        "--disable-dev-shm-usage",
                        "--user-data-dir=" + profile,
                        "--remote-debugging-port=0",
                        "about:blank")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8));
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            if (line.startsWith("DevTools listening on ")) {
                Thread rest = new Thread(() -> said.lines().forEach(more -> {}), "what the browser says");
                rest.setDaemon(true);
                rest.start();
                return new Browser(process, line.substring("DevTools listening on ".length()));
            }
        }
        throw new IOException("chromium did not start");
    }

    private static Optional<Path> program() {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    private final class Answers implements WebSocket.Listener {
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean last) {
            text.append(data);
            if (last) {
                String whole = text.toString();
                text.setLength(0);
                answer(whole);
            }
            from.request(1);
            return null;
        }

        private void answer(String whole) {
            try {
                JsonNode message = JSON.readTree(whole);
                CompletableFuture<JsonNode> asked =
                        waiting.remove(message.path("id").asInt());
                if (asked != null) {
                    asked.complete(message);
                }
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    private JsonNode call(String session, String method, Map<String, ?> parameters) {
        int id = number.incrementAndGet();
        Map<String, Object> message = new LinkedHashMap<>();
        message.put("id", id);
        message.put("method", method);
        message.put("params", parameters);
        if (!session.isEmpty()) {
            message.put("sessionId", session);
        }
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        waiting.put(id, answer);
        try {
            socket.sendText(JSON.writeValueAsString(message), true).join();
            JsonNode got = answer.get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
            if (got.has("error")) {
                throw new IllegalStateException(method + ": " + got.get("error"));
            }
            return got.path("result");
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        } catch (java.util.concurrent.ExecutionException | java.util.concurrent.TimeoutException e) {
            throw new IllegalStateException(method + " had no answer", e);
        }
    }

    /** Opens a file; {@code first} runs before any script of it. */
    public Tab open(Path file, String first) {
        String target = call("", "Target.createTarget", Map.of("url", "about:blank"))
                .path("targetId")
                .asText();
        String session = call("", "Target.attachToTarget", Map.of("targetId", target, "flatten", true))
                .path("sessionId")
                .asText();
        Tab tab = new Tab(session);
        call(session, "Page.enable", Map.of());
        if (!first.isEmpty()) {
            call(session, "Page.addScriptToEvaluateOnNewDocument", Map.of("source", first));
        }
        call(session, "Page.navigate", Map.of("url", file.toUri().toString()));
        tab.until("document.readyState === 'complete' && location.protocol === 'file:'");
        return tab;
    }

    /** A page that is open. */
    public final class Tab {
        private final String session;

        private Tab(String session) {
            this.session = session;
        }

        /** What an expression gives, waited for if it is a promise. */
        public JsonNode value(String expression) {
            JsonNode result = call(
                    session,
                    "Runtime.evaluate",
                    Map.of("expression", expression, "awaitPromise", true, "returnByValue", true));
            if (result.has("exceptionDetails")) {
                throw new IllegalStateException(expression + ": " + result.get("exceptionDetails"));
            }
            return result.path("result").path("value");
        }

        /** Waits until an expression is true. */
        public void until(String expression) {
            long end = System.nanoTime() + PATIENCE.toNanos();
            while (!value(expression).asBoolean()) {
                if (System.nanoTime() > end) {
                    throw new IllegalStateException("never became true: " + expression);
                }
                try {
                    Thread.sleep(50);
                } catch (InterruptedException e) {
                    throw new IllegalStateException(e);
                }
            }
        }

        /** Gives a file or a folder to the field that a selector finds, as if the user had chosen it. */
        public void choose(String selector, Path file) {
            int root = call(session, "DOM.getDocument", Map.of())
                    .path("root")
                    .path("nodeId")
                    .asInt();
            int node = call(session, "DOM.querySelector", Map.of("nodeId", root, "selector", selector))
                    .path("nodeId")
                    .asInt();
            call(session, "DOM.setFileInputFiles", Map.of("files", List.of(file.toString()), "nodeId", node));
        }

        /** Lays the page out at a size, in light or dark, on a screen or in print. */
        public void look(int width, int height, String scheme, String media) {
            call(
                    session,
                    "Emulation.setDeviceMetricsOverride",
                    Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
            call(
                    session,
                    "Emulation.setEmulatedMedia",
                    Map.of(
                            "media",
                            media,
                            "features",
                            List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
        }

        /** The page as it comes out of a printer, a PDF of the paper that the page asks for. */
        public byte[] printed() {
            JsonNode made = call(
                    session,
                    "Page.printToPDF",
                    Map.of("preferCSSPageSize", true, "printBackground", true, "transferMode", "ReturnAsBase64"));
            return Base64.getDecoder().decode(made.path("data").asText());
        }

        /** What is seen now, as PNG. */
        public byte[] picture() {
            return Base64.getDecoder()
                    .decode(call(session, "Page.captureScreenshot", Map.of("format", "png"))
                            .path("data")
                            .asText());
        }
    }

    @Override
    public void close() {
        socket.abort();
        process.destroy();
        try {
            process.waitFor(10, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        process.destroyForcibly();
    }
}
