package quarterlight.caption;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times of captions: {@code 1:02:03.450}, {@code 02:03,450}, {@code 2:03}. */
final class Times {
    static final String FORM = "(?:(\\d{1,4}):)?(\\d{1,3}):(\\d{1,2}(?:[.,]\\d{1,9})?)";
    private static final Pattern WHOLE = Pattern.compile(FORM);

    private Times() {}

    static OptionalDouble seconds(String text) {
        Matcher m = WHOLE.matcher(text.strip());
        if (!m.matches()) {
            return OptionalDouble.empty();
        }
        double hours = m.group(1) == null ? 0 : Double.parseDouble(m.group(1));
        return OptionalDouble.of(hours * 3600
                + Double.parseDouble(m.group(2)) * 60
                + Double.parseDouble(m.group(3).replace(',', '.')));
    }
}
