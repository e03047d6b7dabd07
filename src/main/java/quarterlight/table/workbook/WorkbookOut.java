package quarterlight.table.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes a workbook with one sheet per table: text as text, never as a formula, numbers of columns of numbers as numbers, a header that stays in sight.
 * <p>Source: ECMA-376, part 1, 18.2 (workbook), 18.3 (worksheets, inline strings) and 18.8 (styles); part 2 for the package.
 */
public final class WorkbookOut {
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

    /** Columns whose cells are numbers wherever they look like one; a stamp read as 3970010 stays text. */
    private static final Pattern NUMBERS = Pattern.compile(
            "id|x|y|at|value|nominal|shown|figure|want|lead_days|bytes|orientation|sharpness|pages|rating|row"
                    + "|.*_(px|mm|um|deg|s|percent|tolerance)");

    /** As many digits as a spreadsheet keeps. */
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9]\\d{0,14})(\\.\\d{1,14})?");

    private static final int MAX_DIGITS = 15;

    /** The longest text of a cell. */
    private static final int MAX_TEXT = 32_767;

    private WorkbookOut() {}

    /** @param sheets rows by the name of the sheet, the header first; without characters that no XML may hold */
    public static void write(Map<String, List<List<String>>> sheets, OutputStream out) throws IOException {
        List<String> names = List.copyOf(sheets.keySet());
        try (ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            part(zip, "[Content_Types].xml", contentTypes(names.size()));
            part(
                    zip,
                    "_rels/.rels",
                    HEAD + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                            + "<Relationship Id=\"rId1\" Type=\"" + RELATIONS
                            + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            part(zip, "xl/workbook.xml", workbook(names));
            part(zip, "xl/_rels/workbook.xml.rels", relations(names.size()));
            part(zip, "xl/styles.xml", styles());
            for (int i = 0; i < names.size(); i++) {
                zip.putNextEntry(new ZipEntry("xl/worksheets/sheet" + (i + 1) + ".xml"));
                sheet(zip, sheets.get(names.get(i)));
                zip.closeEntry();
            }
        }
    }

    private static void part(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static String contentTypes(int sheets) {
        String type = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
        StringBuilder out = new StringBuilder(HEAD)
                .append("<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">")
                .append("<Default Extension=\"rels\""
                        + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>")
                .append("<Default Extension=\"xml\" ContentType=\"application/xml\"/>")
                .append("<Override PartName=\"/xl/workbook.xml\" ContentType=\"" + type + "sheet.main+xml\"/>")
                .append("<Override PartName=\"/xl/styles.xml\" ContentType=\"" + type + "styles+xml\"/>");
        for (int i = 1; i <= sheets; i++) {
            out.append("<Override PartName=\"/xl/worksheets/sheet" + i + ".xml\" ContentType=\"" + type
                    + "worksheet+xml\"/>");
        }
        return out.append("</Types>").toString();
    }

    /** Names are words of tables: they have no character that a name of a sheet or XML may not have. */
    private static String workbook(List<String> names) {
        StringBuilder out = new StringBuilder(HEAD)
                .append("<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + RELATIONS + "\"><sheets>");
        for (int i = 0; i < names.size(); i++) {
            out.append(
                    "<sheet name=\"" + names.get(i) + "\" sheetId=\"" + (i + 1) + "\" r:id=\"rId" + (i + 1) + "\"/>");
        }
        return out.append("</sheets></workbook>").toString();
    }

    private static String relations(int sheets) {
        StringBuilder out = new StringBuilder(HEAD)
                .append("<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">");
        for (int i = 1; i <= sheets; i++) {
            out.append("<Relationship Id=\"rId" + i + "\" Type=\"" + RELATIONS
                    + "/worksheet\" Target=\"worksheets/sheet" + i + ".xml\"/>");
        }
        return out.append("<Relationship Id=\"rId" + (sheets + 1) + "\" Type=\"" + RELATIONS
                        + "/styles\" Target=\"styles.xml\"/></Relationships>")
                .toString();
    }

    /** Two faces: plain, and bold for the header. */
    private static String styles() {
        return HEAD + "<styleSheet xmlns=\"" + MAIN + "\"><fonts count=\"2\"><font><sz val=\"10\"/><name"
                + " val=\"Arial\"/></font><font><b/><sz val=\"10\"/><name"
                + " val=\"Arial\"/></font></fonts><fills"
                + " count=\"2\"><fill><patternFill"
                + " patternType=\"none\"/></fill><fill><patternFill"
                + " patternType=\"gray125\"/></fill></fills><borders"
                + " count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs"
                + " count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\""
                + " borderId=\"0\"/></cellStyleXfs><cellXfs count=\"2\"><xf"
                + " numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\""
                + " xfId=\"0\"/><xf numFmtId=\"0\" fontId=\"1\" fillId=\"0\""
                + " borderId=\"0\" xfId=\"0\" applyFont=\"1\"/></cellXfs>"
                + "</styleSheet>";
    }

    private static void sheet(OutputStream out, List<List<String>> rows) throws IOException {
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeStartElement("worksheet");
            xml.writeDefaultNamespace(MAIN);
            pane(xml);
            xml.writeStartElement("sheetData");
            List<String> header = rows.isEmpty() ? List.of() : rows.get(0);
            List<Boolean> numbers = new ArrayList<>();
            header.forEach(name -> numbers.add(NUMBERS.matcher(name).matches()));
            for (int i = 0; i < rows.size(); i++) {
                xml.writeStartElement("row");
                xml.writeAttribute("r", Integer.toString(i + 1));
                for (int column = 0; column < rows.get(i).size(); column++) {
                    boolean number = i > 0 && column < numbers.size() && numbers.get(column);
                    cell(xml, reference(i, column), rows.get(i).get(column), number, i == 0);
                }
                xml.writeEndElement();
            }
            xml.writeEndElement();
            xml.writeEndElement();
            xml.writeEndDocument();
            xml.flush();
        } catch (XMLStreamException e) {
            throw new IOException(e);
        }
    }

    private static void pane(XMLStreamWriter xml) throws XMLStreamException {
        xml.writeStartElement("sheetViews");
        xml.writeStartElement("sheetView");
        xml.writeAttribute("workbookViewId", "0");
        xml.writeEmptyElement("pane");
        xml.writeAttribute("ySplit", "1");
        xml.writeAttribute("topLeftCell", "A2");
        xml.writeAttribute("state", "frozen");
        xml.writeEndElement();
        xml.writeEndElement();
    }

    private static void cell(XMLStreamWriter xml, String at, String text, boolean number, boolean header)
            throws XMLStreamException {
        if (text.isEmpty()) {
            return;
        }
        xml.writeStartElement("c");
        xml.writeAttribute("r", at);
        if (number && NUMBER.matcher(text).matches() && digits(text) <= MAX_DIGITS) {
            xml.writeStartElement("v");
            xml.writeCharacters(text);
        } else {
            if (header) {
                xml.writeAttribute("s", "1");
            }
            xml.writeAttribute("t", "inlineStr");
            xml.writeStartElement("is");
            xml.writeStartElement("t");
            xml.writeAttribute("xml", "http://www.w3.org/XML/1998/namespace", "space", "preserve");
            xml.writeCharacters(text.substring(0, Math.min(MAX_TEXT, text.length())));
            xml.writeEndElement();
        }
        xml.writeEndElement();
        xml.writeEndElement();
    }

    private static long digits(String number) {
        return number.chars().filter(Character::isDigit).count();
    }

    private static String reference(int row, int column) {
        StringBuilder letters = new StringBuilder();
        for (int left = column; left >= 0; left = left / 26 - 1) {
            letters.insert(0, (char) ('A' + left % 26));
        }
        return letters.append(row + 1).toString();
    }
}
