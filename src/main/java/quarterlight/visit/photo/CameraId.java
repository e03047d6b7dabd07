package quarterlight.visit.photo;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A camera as its files name it: maker, model and serial number if any, lower case, with hyphens.
 *
 * @param value never blank
 */
public record CameraId(String value) implements Comparable<CameraId> {
    private static final Pattern NO_LETTERS_OR_DIGITS = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final Pattern OUTER_HYPHENS = Pattern.compile("^-+|-+$");

    public CameraId {
        if (value.isBlank()) {
            throw new IllegalArgumentException("a camera id is never blank");
        }
    }

    /** Made of what the file says; empty if it says neither maker nor model. A model that begins with the maker names it once. */
    public static Optional<CameraId> of(Optional<String> maker, Optional<String> model, Optional<String> serial) {
        String made = maker.map(CameraId::hyphenated).orElse("");
        String called = model.map(CameraId::hyphenated).orElse("");
        if (made.isEmpty() && called.isEmpty()) {
            return Optional.empty();
        }
        String shownMaker = called.equals(made) || called.startsWith(made + "-") ? "" : made;
        return Optional.of(new CameraId(
                Stream.of(shownMaker, called, serial.map(CameraId::hyphenated).orElse(""))
                        .filter(part -> !part.isEmpty())
                        .collect(Collectors.joining("-"))));
    }

    private static String hyphenated(String text) {
        String lower = Normalizer.normalize(text, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
        String hyphens = NO_LETTERS_OR_DIGITS.matcher(lower).replaceAll("-");
        return OUTER_HYPHENS.matcher(hyphens).replaceAll("");
    }

    @Override
    public int compareTo(CameraId other) {
        return value.compareTo(other.value);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CameraId camera && camera.value.equals(value);
    }

    @Override
    public int hashCode() {
        return value.hashCode();
    }

    @Override
    public String toString() {
        return value;
    }
}
