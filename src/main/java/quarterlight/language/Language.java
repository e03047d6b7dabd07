package quarterlight.language;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;

/**
 * A language that people read: of the pages, of the window. The one in hand belongs to a thread, is English unless something runs
 * {@linkplain #during in another}, and goes along to the threads that {@code quarterlight.task} makes for it. What machines read (JSON, CSV, the
 * database, codes) and the command line are English always, so they are made where nothing else is in hand.
 */
public enum Language {
    ENGLISH(Locale.US, "English"),
    GERMAN(Locale.GERMANY, "Deutsch"),
    /** English with every sentence from a bundle between marks, so that what does not come from one shows; for tests, offered to nobody. */
    MARKED(new Locale.Builder().setLanguage("en").setRegion("XA").build(), "English, marked");

    private static final ThreadLocal<Language> IN_HAND = ThreadLocal.withInitial(() -> ENGLISH);

    private final Locale locale;
    private final String ownName;

    Language(Locale locale, String ownName) {
        this.locale = locale;
        this.ownName = ownName;
    }

    /** The languages that people may choose, in the order in which they are offered. */
    public static List<Language> offered() {
        return List.of(ENGLISH, GERMAN);
    }

    /** The language in which this thread speaks to people. */
    public static Language inHand() {
        return IN_HAND.get();
    }

    /** The offered language of a code of ISO 639-1, whatever its case: {@code de}. */
    public static Optional<Language> coded(String code) {
        return offered().stream()
                .filter(one -> one.code().equalsIgnoreCase(code.strip()))
                .findFirst();
    }

    /** The code of ISO 639-1: {@code en}. */
    public String code() {
        return locale.getLanguage();
    }

    /** By what numbers and dates are written. */
    public Locale locale() {
        return locale;
    }

    /** How the language calls itself. */
    public String ownName() {
        return ownName;
    }

    /** Takes this language in hand on this thread until what it gives back is closed; the one before comes back then. */
    public Scope inHandUntilClosed() {
        Language before = IN_HAND.get();
        IN_HAND.set(this);
        return () -> IN_HAND.set(before);
    }

    /** What work gives, done with this language in hand. */
    public <T> T during(Callable<T> work) throws Exception {
        try (Scope scope = inHandUntilClosed()) {
            Objects.requireNonNull(scope, "scope");
            return work.call();
        }
    }

    /** The work, to be done on another thread with the language that is in hand here now. */
    public static Runnable carried(Runnable work) {
        Language asked = inHand();
        return () -> {
            try (Scope scope = asked.inHandUntilClosed()) {
                Objects.requireNonNull(scope, "scope");
                work.run();
            }
        };
    }

    /** The same for work that gives something. */
    public static <T> Callable<T> carried(Callable<T> work) {
        Language asked = inHand();
        return () -> asked.during(work);
    }

    /** While it is open, a language is in hand. */
    @FunctionalInterface
    public interface Scope extends AutoCloseable {
        @Override
        void close();
    }
}
