package quarterlight.table.workbook;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Which cell formats show a number as a date or a time, and what such a number says.
 * <p>Source: ECMA-376 part 1, 18.8.30 (numFmt, the built-in formats) and 18.17.4 (dates and times as serial numbers, both date systems).
 * The days before March 1900 of the 1900 system are one off there by design; they are read as written.
 */
final class Formats {
    /** Digits that spreadsheets show of a number at most. */
    private static final MathContext SHOWN = new MathContext(15);

    private static final double SECONDS = 86_400;
    private static final double MAX_SERIAL = 2_958_466;
    private static final int NO_SUCH_DAY = 60;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss");

    private final List<Boolean> dates;

    private Formats(List<Boolean> dates) {
        this.dates = dates;
    }

    static Formats none() {
        return new Formats(List.of());
    }

    static Formats of(XMLStreamReader xml) throws XMLStreamException {
        Map<Integer, Boolean> own = new HashMap<>();
        List<Boolean> dates = new ArrayList<>();
        boolean cells = false;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                switch (xml.getLocalName()) {
                    case "numFmt" ->
                        own.put(number(xml, "numFmtId"), isDate(xml.getAttributeValue(null, "formatCode")));
                    case "cellXfs" -> cells = true;
                    case "xf" -> {
                        int id = number(xml, "numFmtId");
                        if (cells) {
                            dates.add(own.getOrDefault(id, isBuiltInDate(id)));
                        }
                    }
                    default -> {}
                }
            } else if (event == XMLStreamConstants.END_ELEMENT
                    && xml.getLocalName().equals("cellXfs")) {
                cells = false;
            }
        }
        return new Formats(List.copyOf(dates));
    }

    private static int number(XMLStreamReader xml, String attribute) {
        return CellParts.number(xml.getAttributeValue(null, attribute), -1);
    }

    private static boolean isBuiltInDate(int id) {
        return id >= 14 && id <= 22 || id >= 27 && id <= 36 || id >= 45 && id <= 47 || id >= 50 && id <= 58;
    }

    /** A code with a letter of a date or time outside quotation marks, brackets and escapes. */
    private static boolean isDate(String code) {
        return code != null
                && code.replaceAll("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.|_.|\\*.", "").matches("(?is).*[ymdhs].*");
    }

    boolean isDate(int style) {
        return style >= 0 && style < dates.size() && dates.get(style);
    }

    /** A serial number as a date, a time of day, or both, as tables of ours write them. */
    static String moment(double serial, boolean from1904) {
        if (!(serial >= 0 && serial < MAX_SERIAL)) {
            return plain(Double.toString(serial));
        }
        long seconds = Math.round(serial * SECONDS);
        long days = seconds / (long) SECONDS;
        LocalTime time = LocalTime.ofSecondOfDay(seconds % (long) SECONDS);
        if (days == 0 && !from1904) {
            return TIME.format(time);
        }
        LocalDate zero = from1904
                ? LocalDate.of(1904, 1, 1)
                : days < NO_SUCH_DAY ? LocalDate.of(1899, 12, 31) : LocalDate.of(1899, 12, 30);
        LocalDate day = zero.plusDays(days);
        return time.equals(LocalTime.MIDNIGHT)
                ? day.toString()
                : LocalDateTime.of(day, time).format(DateTimeFormatter.ISO_LOCAL_DATE_TIME);
    }

    /** A number as a person would write it: 4.2, not 4.2000000000000002; what is no number stays as it is. */
    static String plain(String raw) {
        try {
            double value = Double.parseDouble(raw.strip());
            boolean usual = Double.isFinite(value) && Math.abs(value) < 1e15 && (value == 0 || Math.abs(value) > 1e-9);
            return usual
                    ? new BigDecimal(value).round(SHOWN).stripTrailingZeros().toPlainString()
                    : raw.strip();
        } catch (NumberFormatException e) {
            return raw;
        }
    }
}
