package quarterlight.table.workbook;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.zip.ZipException;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads one sheet of a workbook (Office Open XML, .xlsx) as CSV text in which every row stands in the line of its number.
 * <p>Source: ECMA-376 part 1, 18.2 (workbook), 18.3 (worksheets), 18.4 (shared strings). Only values are taken: those that formulas had when
 * the file was saved; macros, links and drawings are not looked at. Bounds: bytes a part unpacks to, rows, columns, letters.
 */
public final class Workbook {
    private static final String MAIN = "xl/workbook.xml";
    private static final String RELATIONS = "xl/_rels/workbook.xml.rels";
    private static final int MAX_SHEETS = 255;
    private static final int MAX_NAMED = 8;
    private static final int MAX_SHARED = 500_000;
    private static final long MAX_SHARED_LETTERS = 16L << 20;
    private static final byte[] PACKED = {'P', 'K', 3, 4};
    /** How files begin that hold a workbook under a password, and those of the older format. */
    private static final byte[] COMPOUND = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};

    private final Parts parts;
    private boolean from1904;

    private Workbook(Parts parts) {
        this.parts = parts;
    }

    /** Whether a file that begins so is to be read here: to be taken, or to be refused for what it is. */
    public static boolean isOne(byte[] begin) {
        return begins(begin, PACKED) || begins(begin, COMPOUND);
    }

    private static boolean begins(byte[] bytes, byte[] with) {
        return bytes.length >= with.length && java.util.Arrays.equals(bytes, 0, with.length, with, 0, with.length);
    }

    /**
     * A sheet as CSV text with comma.
     *
     * @param begin the first bytes of the file
     * @param sheet name of the sheet, however capitalized; may be left out if only one holds anything
     */
    public static String csv(Path file, byte[] begin, Optional<String> sheet) throws IOException, WorkbookRefused {
        if (begins(begin, COMPOUND)) {
            throw new WorkbookRefused(say("workbook.locked"));
        }
        try (Parts parts = new Parts(file)) {
            return new Workbook(parts).read(sheet);
        } catch (ZipException e) {
            throw new WorkbookRefused(say("workbook.damaged"));
        } catch (java.io.EOFException e) {
            throw new WorkbookRefused(say("workbook.short"));
        }
    }

    private String read(Optional<String> wanted) throws IOException, WorkbookRefused {
        Map<String, String> sheets = sheets();
        List<String> shared =
                parts.read("xl/sharedStrings.xml", Workbook::shared).orElse(List.of());
        Formats formats = parts.read("xl/styles.xml", Formats::of).orElse(Formats.none());
        if (wanted.isPresent()) {
            String name = sheets.keySet().stream()
                    .filter(one -> one.equalsIgnoreCase(wanted.get().strip()))
                    .findFirst()
                    .orElseThrow(() -> new WorkbookRefused(
                            say("workbook.no-such-sheet", wanted.get(), named(sheets)), names(sheets)));
            return csv(rows(sheets.get(name), shared, formats));
        }
        Map<String, Map<Integer, List<String>>> filled = new LinkedHashMap<>();
        for (Map.Entry<String, String> sheet : sheets.entrySet()) {
            if (filled.size() < 2) {
                Map<Integer, List<String>> rows = rows(sheet.getValue(), shared, formats);
                if (!rows.isEmpty()) {
                    filled.put(sheet.getKey(), rows);
                }
            }
        }
        if (filled.size() > 1) {
            throw new WorkbookRefused(say("workbook.several", named(sheets)), names(sheets));
        }
        return csv(filled.values().stream().findFirst().orElse(Map.of()));
    }

    private static List<String> names(Map<String, String> sheets) {
        return List.copyOf(sheets.keySet());
    }

    private static String named(Map<String, String> sheets) {
        String first = sheets.keySet().stream()
                .limit(MAX_NAMED)
                .map(name -> "\"" + name + "\"")
                .collect(Collectors.joining(", "));
        return first + (sheets.size() > MAX_NAMED ? say("workbook.more", sheets.size() - MAX_NAMED) : "");
    }

    /** Part of each sheet that is shown, by its name. */
    private Map<String, String> sheets() throws IOException, WorkbookRefused {
        Map<String, String> targets = parts.read(RELATIONS, Workbook::targets).orElse(Map.of());
        Map<String, String> ids =
                parts.read(MAIN, this::ids).orElseThrow(() -> new WorkbookRefused(say("workbook.no-workbook")));
        Map<String, String> sheets = new LinkedHashMap<>();
        ids.forEach((name, id) -> {
            String target = targets.getOrDefault(id, "");
            String part = target.startsWith("/") ? target.substring(1) : "xl/" + target;
            if (parts.has(part)) {
                sheets.put(name, part);
            }
        });
        if (sheets.isEmpty()) {
            throw new WorkbookRefused(say("workbook.no-cells"));
        }
        return sheets;
    }

    private static Map<String, String> targets(XMLStreamReader xml) throws XMLStreamException {
        Map<String, String> targets = new LinkedHashMap<>();
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT
                    && xml.getLocalName().equals("Relationship")
                    && !"External".equals(xml.getAttributeValue(null, "TargetMode"))
                    && xml.getAttributeValue(null, "Target") != null
                    && String.valueOf(xml.getAttributeValue(null, "Type")).endsWith("/worksheet")) {
                targets.put(String.valueOf(xml.getAttributeValue(null, "Id")), xml.getAttributeValue(null, "Target"));
            }
        }
        return targets;
    }

    private Map<String, String> ids(XMLStreamReader xml) throws XMLStreamException, WorkbookRefused {
        Map<String, String> ids = new LinkedHashMap<>();
        while (xml.hasNext()) {
            if (xml.next() != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            if (xml.getLocalName().equals("workbookPr")) {
                String system =
                        String.valueOf(xml.getAttributeValue(null, "date1904")).toLowerCase(Locale.ROOT);
                from1904 = system.equals("1") || system.equals("true");
            }
            boolean shown = xml.getAttributeValue(null, "state") == null
                    || xml.getAttributeValue(null, "state").equals("visible");
            if (xml.getLocalName().equals("sheet") && shown) {
                for (int i = 0; i < xml.getAttributeCount(); i++) {
                    if (xml.getAttributeLocalName(i).equals("id") && ids.size() < MAX_SHEETS) {
                        ids.put(String.valueOf(xml.getAttributeValue(null, "name")), xml.getAttributeValue(i));
                    }
                }
            }
        }
        return ids;
    }

    private static List<String> shared(XMLStreamReader xml) throws XMLStreamException, WorkbookRefused {
        List<String> texts = new ArrayList<>();
        long letters = 0;
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT
                    && xml.getLocalName().equals("si")) {
                String text = CellParts.text(xml, "t");
                letters += text.length();
                if (texts.size() >= MAX_SHARED || letters > MAX_SHARED_LETTERS) {
                    throw new WorkbookRefused(say("workbook.too-much-text"));
                }
                texts.add(text);
            }
        }
        return texts;
    }

    private Map<Integer, List<String>> rows(String part, List<String> shared, Formats formats)
            throws IOException, WorkbookRefused {
        return parts.read(part, xml -> new SheetRows(shared, formats, from1904).read(xml))
                .orElse(Map.of());
    }

    /** Every row as wide as the widest; a line for each number up to the last row. */
    private static String csv(Map<Integer, List<String>> rows) {
        int width = rows.values().stream().mapToInt(List::size).max().orElse(0);
        StringBuilder out = new StringBuilder();
        int line = 1;
        for (Map.Entry<Integer, List<String>> row : rows.entrySet()) {
            out.append("\n".repeat(Math.max(0, row.getKey() - line)));
            for (int i = 0; i < width; i++) {
                out.append(i > 0 ? "," : "")
                        .append(quoted(
                                i < row.getValue().size() ? row.getValue().get(i) : ""));
            }
            out.append('\n');
            line = row.getKey() + 1;
        }
        return out.toString();
    }

    private static String quoted(String cell) {
        String line = cell.replaceAll("[\\r\\n]+", " ").replace("\u0000", "");
        return line.isEmpty() ? "" : "\"" + line.replace("\"", "\"\"") + "\"";
    }
}
