package quarterlight.caption;

import static quarterlight.language.Sentences.say;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The JSON of speech recognizers: wherever an object has a start, an end and a text or a word, it is a stretch of speech. Starts are
 * seconds ({@code start}), or milliseconds ({@code offsets.from}, {@code t0} in hundredths). Words within a segment go before the segment's
 * own text, as they carry the finer times.
 */
final class RecognizerJson {
    private static final int MAX_DEPTH = 32;

    private RecognizerJson() {}

    static List<RawCue> cues(String name, String text) throws WordsUnreadable {
        JsonFactory factory = JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(MAX_DEPTH)
                        .build())
                .build();
        try (JsonParser parser = factory.createParser(text)) {
            List<RawCue> cues = new ArrayList<>();
            parser.nextToken();
            value(parser, cues);
            return cues;
        } catch (IOException e) {
            throw new WordsUnreadable(name, say("captions.json", firstLine(e)));
        }
    }

    private static String firstLine(IOException e) {
        String message = e.getMessage() == null ? "broken" : e.getMessage();
        int end = message.indexOf('\n');
        return end < 0 ? message : message.substring(0, end);
    }

    private static void value(JsonParser parser, List<RawCue> cues) throws IOException {
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_ARRAY) {
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                value(parser, cues);
            }
        } else if (token == JsonToken.START_OBJECT) {
            object(parser, cues);
        }
    }

    private static Map<String, String> object(JsonParser parser, List<RawCue> cues) throws IOException {
        Map<String, String> fields = new HashMap<>();
        List<RawCue> inner = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            JsonToken token = parser.nextToken();
            if (token == JsonToken.START_OBJECT) {
                object(parser, inner).forEach((k, v) -> fields.putIfAbsent(key + "." + k, v));
            } else if (token == JsonToken.START_ARRAY) {
                value(parser, inner);
            } else {
                fields.put(key, parser.getText());
            }
        }
        OptionalDouble from = time(fields, "start", "start_time", "offsets.from", "t0", "from");
        OptionalDouble until = time(fields, "end", "end_time", "offsets.to", "t1", "to");
        String said =
                fields.getOrDefault("word", fields.getOrDefault("text", fields.getOrDefault("punctuated_word", "")));
        if (!inner.isEmpty() || from.isEmpty() || until.isEmpty() || said.isBlank()) {
            cues.addAll(inner);
        } else {
            cues.add(new RawCue(from.getAsDouble(), until.getAsDouble(), said.strip()));
        }
        return fields;
    }

    private static OptionalDouble time(Map<String, String> fields, String... names) {
        for (String name : names) {
            String text = fields.get(name);
            if (text != null && text.matches("\\d{1,9}(\\.\\d{1,9})?s?")) {
                double value = Double.parseDouble(text.replace("s", ""));
                double scale = name.startsWith("offsets")
                        ? 1000
                        : name.startsWith("t") && name.length() == 2 && !name.equals("to") ? 100 : 1;
                return OptionalDouble.of(value / scale);
            }
        }
        return OptionalDouble.empty();
    }
}
