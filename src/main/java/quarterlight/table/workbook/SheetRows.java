package quarterlight.table.workbook;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads the rows of one sheet as text, each at its number, within bounds. */
final class SheetRows {
    static final int MAX_ROWS = 50_000;
    static final int MAX_COLUMNS = 256;
    private static final long MAX_TEXT = 16L << 20;

    private final List<String> shared;
    private final Formats formats;
    private final boolean from1904;
    private final Map<Integer, List<String>> rows = new TreeMap<>();
    private long letters;
    private int row;
    private int column;

    SheetRows(List<String> shared, Formats formats, boolean from1904) {
        this.shared = shared;
        this.formats = formats;
        this.from1904 = from1904;
    }

    /** The rows that hold something, by their number from 1. */
    Map<Integer, List<String>> read(XMLStreamReader xml) throws XMLStreamException, WorkbookRefused {
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                if (xml.getLocalName().equals("row")) {
                    row = CellParts.number(xml.getAttributeValue(null, "r"), row + 1);
                    column = -1;
                } else if (xml.getLocalName().equals("c")) {
                    cell(xml);
                }
            }
        }
        return rows;
    }

    private void cell(XMLStreamReader xml) throws XMLStreamException, WorkbookRefused {
        String name = xml.getAttributeValue(null, "r");
        column = name == null ? column + 1 : CellParts.column(name);
        String type = xml.getAttributeValue(null, "t");
        int style = CellParts.number(xml.getAttributeValue(null, "s"), -1);
        String place = name == null ? say("workbook.of-row", row) : name;
        String value = "";
        boolean formula = false;
        while (true) {
            int event = xml.next();
            if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("c")) {
                break;
            }
            if (event == XMLStreamConstants.START_ELEMENT) {
                switch (xml.getLocalName()) {
                    case "v" -> value = CellParts.text(xml, "");
                    case "is" -> value = CellParts.text(xml, "t");
                    case "f" -> {
                        formula = true;
                        CellParts.text(xml, "");
                    }
                    default -> CellParts.text(xml, "");
                }
            }
        }
        if (formula && value.isEmpty() && !"str".equals(type)) {
            throw new WorkbookRefused(say("workbook.formula", place));
        }
        put(shown(value, type == null ? "n" : type, style, place));
    }

    private String shown(String value, String type, int style, String place) throws WorkbookRefused {
        if (value.isEmpty()) {
            return "";
        }
        return switch (type) {
            case "s" -> {
                int at = CellParts.number(value, -1);
                if (at < 0 || at >= shared.size()) {
                    throw new WorkbookRefused(say("workbook.text", place));
                }
                yield shared.get(at);
            }
            case "b" -> value.strip().equals("1") ? "yes" : "no";
            case "e" -> throw new WorkbookRefused(say("workbook.error", value, place));
            case "n" ->
                formats.isDate(style) && isNumber(value)
                        ? Formats.moment(Double.parseDouble(value), from1904)
                        : Formats.plain(value);
            default -> value;
        };
    }

    private static boolean isNumber(String value) {
        return value.strip().matches("[+-]?[0-9.]{1,30}([eE][+-]?[0-9]{1,3})?")
                && !value.strip().matches("[+-]?\\.*");
    }

    private void put(String text) throws WorkbookRefused {
        if (text.isBlank()) {
            return;
        }
        if (row < 1 || row > MAX_ROWS) {
            throw new WorkbookRefused(say("workbook.rows", MAX_ROWS));
        }
        if (column < 0 || column >= MAX_COLUMNS) {
            throw new WorkbookRefused(say("workbook.columns", MAX_COLUMNS));
        }
        letters += text.length();
        if (letters > MAX_TEXT) {
            throw new WorkbookRefused(say("workbook.letters", (MAX_TEXT >> 20)));
        }
        List<String> cells = rows.computeIfAbsent(row, fresh -> new ArrayList<>());
        while (cells.size() <= column) {
            cells.add("");
        }
        cells.set(column, text);
    }
}
