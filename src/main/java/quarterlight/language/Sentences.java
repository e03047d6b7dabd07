package quarterlight.language;

import static quarterlight.language.Sentences.say;

import java.text.FieldPosition;
import java.text.Format;
import java.text.MessageFormat;
import java.text.ParsePosition;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Objects;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Sentences by key in the language in hand. A key begins with its area, the name of the bundle that holds it: {@code brief.looked-at} stands in
 * {@code quarterlight/language/brief.properties}. Where a language lacks a sentence it is said in English. Every text is a pattern of
 * {@link MessageFormat}: an apostrophe is written twice, {@code {0}} puts an argument in as it is, and
 * {@code {0,choice,0#spots|1#spot|2#spots}} chooses by a number. Safe for several threads.
 */
public final class Sentences {
    private static final String HOME = "quarterlight.language.";
    /** Stand around each sentence of the marked language. */
    public static final String MARK = "\u27e6";

    public static final String MARK_END = "\u27e7";

    /** Stands for a key that a language lacks. */
    private static final MessageFormat NONE = new MessageFormat("", Locale.ROOT);

    private static final ResourceBundle.Control ENGLISH_ELSE =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    /** Each sentence is looked up and taken apart once per language: pages say the same ones thousands of times. */
    private static final Map<Language, Map<String, MessageFormat>> KNOWN = known();

    private Sentences() {}

    private static Map<Language, Map<String, MessageFormat>> known() {
        Map<Language, Map<String, MessageFormat>> known = new EnumMap<>(Language.class);
        for (Language language : Language.values()) {
            known.put(language, new ConcurrentHashMap<>());
        }
        return known;
    }

    /**
     * The sentence of a key in the language in hand, with its arguments put in.
     *
     * @throws MissingResourceException if there is no such key
     */
    public static String say(String key, Object... arguments) {
        return filled(pattern(Language.inHand(), key), arguments);
    }

    /** The sentence of a key in the language in hand; where no bundle has the key, the English that a table or a code gives. */
    public static String sayOr(String key, String english) {
        Language language = Language.inHand();
        if (language != Language.GERMAN) {
            return language == Language.MARKED ? MARK + english + MARK_END : english;
        }
        MessageFormat pattern =
                KNOWN.get(language).computeIfAbsent(key, fresh -> has(language, fresh) ? read(language, fresh) : NONE);
        return pattern.equals(NONE) ? english : filled(pattern);
    }

    /** A text that somebody typed, with a capital and a full stop. */
    public static String whole(String text) {
        String bare = text.strip();
        if (bare.isEmpty()) {
            return bare;
        }
        int first = bare.offsetByCodePoints(0, 1);
        String capital = bare.substring(0, first).toUpperCase(Locale.ROOT) + bare.substring(first);
        return ".!?\u2026\u3002\u061f".indexOf(capital.charAt(capital.length() - 1)) >= 0 ? capital : capital + ".";
    }

    /** Figures in the decimal signs of the language in hand, by a format of {@link String#format(String, Object...)}. */
    public static String figure(String format, Object... values) {
        return String.format(Language.inHand().locale(), format, values);
    }

    /** A text that begins a sentence, as it stands within one: with a small letter, but in German as it is, where nouns keep theirs. */
    public static String within(String text) {
        return text.isEmpty() || Language.inHand() == Language.GERMAN
                ? text
                : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    /** Things in a row with the language's word for {@code and} before the last: {@code a, b and c}. */
    public static String and(List<String> things) {
        return listed(things, say("common.and"));
    }

    /** The same with {@code or}. */
    public static String or(List<String> things) {
        return listed(things, say("common.or"));
    }

    private static String listed(List<String> things, String word) {
        int last = things.size() - 1;
        return last < 1
                ? String.join("", things)
                : String.join(", ", things.subList(0, last)) + " " + word + " " + things.get(last);
    }

    private static boolean has(Language language, String key) {
        try {
            return bundle(language, key).containsKey(key);
        } catch (MissingResourceException e) {
            return false;
        }
    }

    private static MessageFormat pattern(Language language, String key) {
        Map<String, MessageFormat> known = KNOWN.get(language);
        MessageFormat pattern = known.get(key);
        return pattern != null ? pattern : known.computeIfAbsent(key, fresh -> read(language, fresh));
    }

    private static MessageFormat read(Language language, String key) {
        String text = bundle(language, key).getString(key);
        MessageFormat pattern =
                new MessageFormat(language == Language.MARKED ? MARK + text + MARK_END : text, language.locale());
        Format[] formats = pattern.getFormats();
        for (int i = 0; i < formats.length; i++) {
            if (formats[i] == null) {
                pattern.setFormat(i, AsItIs.ONE);
            }
        }
        return pattern;
    }

    private static ResourceBundle bundle(Language language, String key) {
        int dot = key.indexOf('.');
        if (dot < 1) {
            throw new MissingResourceException("a key begins with its area: " + key, HOME, key);
        }
        Locale locale = language == Language.GERMAN ? Locale.GERMAN : Locale.ROOT;
        return ResourceBundle.getBundle(HOME + key.substring(0, dot), locale, ENGLISH_ELSE);
    }

    private static String filled(MessageFormat pattern, Object... arguments) {
        // formats are not safe for several threads
        return ((MessageFormat) pattern.clone()).format(arguments);
    }

    /** Puts a value in as text: a number too, without signs between its thousands. */
    private static final class AsItIs extends Format {
        private static final long serialVersionUID = 1L;
        private static final AsItIs ONE = new AsItIs();

        @Override
        public StringBuffer format(Object value, StringBuffer to, FieldPosition position) {
            return to.append(Objects.toString(value));
        }

        @Override
        public Object parseObject(String text, ParsePosition position) {
            throw new UnsupportedOperationException("sentences are said, not read");
        }
    }
}
