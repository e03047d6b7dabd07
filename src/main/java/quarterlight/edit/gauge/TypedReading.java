package quarterlight.edit.gauge;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.edit.EditRefused;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.reading.GaugeValue;

/** A reading as it is typed, or as a gauge types it: a number with point or comma, a unit if it is not the usual one, or a word. */
public final class TypedReading {
    private static final Pattern NUMBER = Pattern.compile("([+-]?\\d{1,7}(?:[.,]\\d{1,4})?)\\s*(\\p{L}+)?");

    private TypedReading() {}

    /**
     * Reads what was typed: {@code 5.2}, {@code 5,2}, {@code 132 um}, {@code n} or {@code none} (no metal found), {@code o} or
     * {@code over} (beyond the range).
     *
     * @param usual the unit of a bare number
     * @param range the most the gauge can show
     */
    public static GaugeValue of(String typed, ThicknessUnit usual, Thickness range) throws EditRefused {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        if (text.equals("n") || text.equals("none") || text.equals("kein") || text.equals("keins")) {
            return new GaugeValue.NoMetal();
        }
        if (text.equals("o") || text.equals("over") || text.equals("\u00fcber")) {
            return new GaugeValue.OverRange();
        }
        Matcher number = NUMBER.matcher(text);
        if (!number.matches()) {
            throw new EditRefused("reading", say("refused.reading", typed.strip()));
        }
        Optional<String> said = Optional.ofNullable(number.group(2));
        ThicknessUnit unit = said.isEmpty()
                ? usual
                : ThicknessUnit.said(said.get())
                        .orElseThrow(() -> new EditRefused("reading", say("refused.reading.unit", said.get())));
        GaugeValue.Measured value =
                new GaugeValue.Measured(new BigDecimal(number.group(1).replace(',', '.')), unit);
        if (value.thickness().um() > range.um()) {
            throw new EditRefused("reading", say("refused.reading.range", typed.strip(), Math.round(range.um())));
        }
        return value;
    }
}
