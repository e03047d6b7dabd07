package quarterlight.caption;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import quarterlight.file.PlainFile;
import quarterlight.words.Cue;
import quarterlight.words.TimedWords;

/**
 * Timed words from the bytes of a file. The form is told from the content, not from the ending: WebVTT and SRT by their arrows, lines
 * that begin with a time in brackets, JSON by its first character. What is odd but usable is read, and told in a remark.
 */
public final class CaptionFile {
    /** A day of speech has some megabytes of captions. */
    static final long MAX_BYTES = 8L << 20;

    static final int MAX_CUES = 50_000;
    /** Some five hours of quick speech. */
    static final int MAX_WORDS = 50_000;

    private static final double MIN_LATIN = 0.5;

    /**
     * What was read.
     *
     * @param remarks what is odd about it, in sentences
     */
    public record Read(TimedWords words, List<String> remarks) {
        public Read {
            remarks = List.copyOf(remarks);
        }
    }

    private CaptionFile() {}

    /** @throws WordsUnreadable if the file is not there, too large, or holds no timed words */
    public static Read read(Path file) throws WordsUnreadable {
        String name = file.getFileName() == null
                ? file.toString()
                : file.getFileName().toString();
        try {
            if (Files.isDirectory(file)) {
                throw new WordsUnreadable(name, say("captions.folder"));
            }
            PlainFile.requirePlain(file);
            if (Files.size(file) > MAX_BYTES) {
                throw tooLarge(name);
            }
            return read(name, Files.readAllBytes(file));
        } catch (PlainFile.Unsuitable e) {
            throw new WordsUnreadable(name, e.getReason());
        } catch (NoSuchFileException e) {
            throw new WordsUnreadable(name, say("cell.file.missing"));
        } catch (AccessDeniedException e) {
            throw new WordsUnreadable(name, say("cell.file.access"));
        } catch (IOException e) {
            throw new WordsUnreadable(name, say("cell.file.disk", e.getMessage()));
        }
    }

    /** @throws WordsUnreadable if the bytes are no timed words */
    public static Read read(String name, byte[] bytes) throws WordsUnreadable {
        if (bytes.length > MAX_BYTES) {
            throw tooLarge(name);
        }
        List<String> remarks = new ArrayList<>();
        String text = text(name, bytes, remarks);
        String start = text.stripLeading();
        if (start.isEmpty()) {
            throw new WordsUnreadable(name, say("captions.empty"));
        }
        List<RawCue> raw;
        if (start.startsWith("{") || start.startsWith("[{")) {
            raw = RecognizerJson.cues(name, text);
        } else if (text.contains("-->")) {
            raw = ArrowCues.of(text);
        } else {
            raw = LineCues.of(text);
        }
        if (raw.isEmpty()) {
            throw new WordsUnreadable(name, say("captions.no-times"));
        }
        if (raw.size() > MAX_CUES) {
            throw new WordsUnreadable(name, say("captions.cues", MAX_CUES));
        }
        List<Cue> cues = CueOrder.of(raw, remarks);
        if (cues.isEmpty()) {
            throw new WordsUnreadable(name, say("captions.no-words"));
        }
        long words = cues.stream()
                .mapToLong(cue -> cue.text().chars().filter(c -> c == ' ').count() + 1)
                .sum();
        if (words > MAX_WORDS) {
            throw new WordsUnreadable(name, say("captions.words", MAX_WORDS));
        }
        otherScript(cues, remarks);
        return new Read(new TimedWords(name, cues), remarks);
    }

    private static WordsUnreadable tooLarge(String name) {
        return new WordsUnreadable(name, say("captions.large", (MAX_BYTES >> 20)));
    }

    private static String text(String name, byte[] bytes, List<String> remarks) throws WordsUnreadable {
        Charset charset = StandardCharsets.UTF_8;
        if (bytes.length >= 2 && (bytes[0] & 0xff) == 0xff && (bytes[1] & 0xff) == 0xfe) {
            charset = StandardCharsets.UTF_16;
        } else if (bytes.length >= 2 && (bytes[0] & 0xff) == 0xfe && (bytes[1] & 0xff) == 0xff) {
            charset = StandardCharsets.UTF_16;
        }
        String text;
        try {
            text = charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            if (binary(bytes)) {
                throw new WordsUnreadable(name, say("captions.no-text"));
            }
            remarks.add(say("captions.latin"));
            text = new String(bytes, Charset.forName("windows-1252"));
        }
        if (text.indexOf('\0') >= 0) {
            throw new WordsUnreadable(name, say("captions.no-text"));
        }
        return (text.startsWith("\ufeff") ? text.substring(1) : text)
                .replace("\r\n", "\n")
                .replace('\r', '\n');
    }

    private static boolean binary(byte[] bytes) {
        int odd = 0;
        int n = Math.min(bytes.length, 4096);
        for (int i = 0; i < n; i++) {
            odd += bytes[i] >= 0 && bytes[i] < 9 || bytes[i] > 13 && bytes[i] < 32 ? 1 : 0;
        }
        return odd * 20 > n;
    }

    private static void otherScript(List<Cue> cues, List<String> remarks) {
        long letters = 0;
        long latin = 0;
        for (Cue cue : cues) {
            letters += cue.text().codePoints().filter(Character::isLetter).count();
            latin += cue.text()
                    .codePoints()
                    .filter(c ->
                            Character.isLetter(c) && Character.UnicodeScript.of(c) == Character.UnicodeScript.LATIN)
                    .count();
        }
        if (letters > 0 && latin < MIN_LATIN * letters) {
            remarks.add(say("captions.script"));
        }
    }
}
