package quarterlight.page.script;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.Character.UnicodeScript;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** Typefaces that stand in where the main one, which has Latin, Greek and Cyrillic, lacks a character. Each is read when it is first needed. */
public enum ScriptFont {
    /** Chinese characters, kana and their punctuation. */
    HAN("Quarterlight Han", "DroidSansFallbackFull.ttf"),
    HANGUL("Quarterlight Hangul", "NanumGothic-Regular.ttf"),
    ARABIC("Quarterlight Arabic", "NotoSansArabic-Regular.ttf"),
    HEBREW("Quarterlight Hebrew", "NotoSansHebrew-Regular.ttf"),
    /** Pictures in one color. */
    EMOJI("Quarterlight Pictures", "NotoEmoji-Regular.ttf");

    private static final String FOLDER = "/quarterlight/fonts/";
    private static final int FIRST_FOREIGN = 0x0590;
    private static final Map<ScriptFont, Font> READ = new ConcurrentHashMap<>();

    private final String family;
    private final String file;

    ScriptFont(String family, String file) {
        this.family = family;
        this.file = file;
    }

    /** Its name in style rules. */
    public String family() {
        return family;
    }

    /** All families as style rules list them after the main one. */
    public static String families() {
        return Arrays.stream(values()).map(font -> "'" + font.family + "'").collect(Collectors.joining(", "));
    }

    /** The file of the typeface. */
    public byte[] bytes() {
        try (InputStream in = ScriptFont.class.getResourceAsStream(FOLDER + file)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled font " + file + " cannot be read", e);
        }
    }

    /** The typeface for drawing, one unit high. */
    public Font font() {
        return READ.computeIfAbsent(this, ScriptFont::read);
    }

    private Font read() {
        try (InputStream in = ScriptFont.class.getResourceAsStream(FOLDER + file)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled font " + file + " cannot be read", e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the bundled font " + file + " is damaged", e);
        }
    }

    /** The typeface that has a character; empty for those of the main one and for what no bundled typeface has. */
    public static Optional<ScriptFont> of(int c) {
        return c < FIRST_FOREIGN
                ? Optional.empty()
                : likely(c).filter(font -> font.font().canDisplay(c));
    }

    private static Optional<ScriptFont> likely(int c) {
        UnicodeScript script = UnicodeScript.of(c);
        return switch (script) {
            case HAN, HIRAGANA, KATAKANA, BOPOMOFO -> Optional.of(HAN);
            case HANGUL -> Optional.of(HANGUL);
            case ARABIC -> Optional.of(ARABIC);
            case HEBREW -> Optional.of(HEBREW);
            case COMMON, INHERITED -> common(c);
            default -> Optional.empty();
        };
    }

    /** Of characters that several scripts share: punctuation and digits of East Asia and of Arabic, else a picture. */
    private static Optional<ScriptFont> common(int c) {
        if (c >= 0x3000 && c <= 0x33FF || c >= 0xFE30 && c <= 0xFE4F || c >= 0xFF00 && c <= 0xFFEF) {
            return Optional.of(HAN);
        }
        if (c >= 0x0600 && c <= 0x06FF) {
            return Optional.of(ARABIC);
        }
        return c >= 0x2190 ? Optional.of(EMOJI) : Optional.empty();
    }

    /** The typefaces that a text needs besides the main one. */
    public static Set<ScriptFont> neededFor(String text) {
        return text.codePoints()
                .filter(c -> c >= FIRST_FOREIGN)
                .distinct()
                .mapToObj(ScriptFont::of)
                .flatMap(Optional::stream)
                .collect(Collectors.toCollection(() -> java.util.EnumSet.noneOf(ScriptFont.class)));
    }
}
