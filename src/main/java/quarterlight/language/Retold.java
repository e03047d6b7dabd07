package quarterlight.language;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Says in the language in hand what was made in English and handed on so: remarks that a visit keeps, answers of another process, faults of files.
 * The bundle {@code told} holds their English as patterns; what a pattern puts in is retold likewise. What stands in none stays as it is. Safe for
 * several threads.
 */
public final class Retold {
    private static final String AREA = "told.of.";
    private static final Pattern ARGUMENT = Pattern.compile("\\{(\\d)}");
    private static final Pattern FRACTION = Pattern.compile("-?\\d+\\.\\d+");
    private static final Pattern WORD = Pattern.compile("[a-z]+");
    private static final List<String> WORDS = List.of("words.viewtitle.", "words.bodystyle.");
    /** A fault of a line of a file within a sentence is three deep. */
    private static final int DEEPEST = 4;

    private Retold() {}

    /** A sentence, or the part of one that follows a colon. */
    public static String of(String english) {
        return Language.inHand() == Language.ENGLISH
                ? english
                : told(english, DEEPEST).orElse(english);
    }

    private static Optional<String> told(String english, int deep) {
        if (FRACTION.matcher(english).matches()) {
            return Optional.of(Language.inHand() == Language.GERMAN ? english.replace('.', ',') : english);
        }
        if (WORD.matcher(english).matches()) {
            Optional<String> word = WORDS.stream()
                    .map(list -> Sentences.sayOr(list + english, ""))
                    .filter(found -> !found.isEmpty())
                    .findFirst();
            if (Language.inHand() == Language.GERMAN && word.isPresent()) {
                return word;
            }
        }
        for (Told one : Told.ALL) {
            Matcher match = one.form.matcher(english);
            if (match.matches()) {
                Object[] parts = new Object[match.groupCount()];
                for (int i = 0; i < parts.length; i++) {
                    String part = match.group(i + 1);
                    parts[i] = deep == 0 ? part : told(part, deep - 1).orElse(part);
                }
                return Optional.of(Sentences.say(one.key, parts));
            }
        }
        return Optional.empty();
    }

    /** One English sentence; its values stand in the order of their numbers. */
    private record Told(String key, Pattern form, int letters) {
        /** What says most by itself comes first. */
        private static final List<Told> ALL = all();

        private static List<Told> all() {
            ResourceBundle bundle = ResourceBundle.getBundle(
                    "quarterlight.language.told",
                    Locale.ROOT,
                    ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
            List<Told> all = new ArrayList<>();
            for (String key : bundle.keySet()) {
                if (key.startsWith(AREA)) {
                    all.add(of(key, bundle.getString(key).replace("''", "'")));
                }
            }
            all.sort(Comparator.comparingInt(Told::letters).reversed().thenComparing(Told::key));
            return List.copyOf(all);
        }

        private static Told of(String key, String english) {
            StringBuilder form = new StringBuilder();
            Matcher argument = ARGUMENT.matcher(english);
            int from = 0;
            while (argument.find()) {
                form.append(Pattern.quote(english.substring(from, argument.start())))
                        .append("(.+?)");
                from = argument.end();
            }
            form.append(Pattern.quote(english.substring(from)));
            return new Told(
                    key,
                    Pattern.compile(form.toString(), Pattern.DOTALL),
                    ARGUMENT.matcher(english).replaceAll("").length());
        }
    }
}
