package quarterlight.table.workbook;

import static quarterlight.language.Sentences.say;

import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Pieces of reading cells that several parts share. */
final class CellParts {
    /** Letters that a cell may hold in a workbook (ECMA-376 leaves it open; spreadsheets keep to this). */
    static final int MAX_LETTERS = 32_767;

    private CellParts() {}

    /**
     * The text within the element at hand, without readings aid (rPh) and markup; the reader stands at its end afterwards.
     *
     * @param only take the text of elements of this name only; empty for all of it
     */
    static String text(XMLStreamReader xml, String only) throws XMLStreamException, WorkbookRefused {
        StringBuilder text = new StringBuilder();
        int depth = 1;
        int aside = 0;
        boolean taking = only.isEmpty();
        while (depth > 0) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                depth++;
                aside += xml.getLocalName().equals("rPh") ? 1 : 0;
                taking = only.isEmpty() || aside == 0 && xml.getLocalName().equals(only);
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
                aside -= xml.getLocalName().equals("rPh") ? 1 : 0;
                taking = only.isEmpty();
            } else if (taking && (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA)) {
                text.append(xml.getText());
                if (text.length() > MAX_LETTERS) {
                    throw new WorkbookRefused(say("workbook.cell", MAX_LETTERS));
                }
            }
        }
        return text.toString();
    }

    /** A whole number, or another where the text is none. */
    static int number(String text, int other) {
        try {
            return text == null ? other : Integer.parseInt(text.strip());
        } catch (NumberFormatException e) {
            return other;
        }
    }

    /** The column of a cell such as C12, from 0; -1 if it names none. */
    static int column(String name) {
        int column = 0;
        int at = 0;
        while (name != null && at < name.length() && at < 4 && name.charAt(at) >= 'A' && name.charAt(at) <= 'Z') {
            column = column * 26 + name.charAt(at) - 'A' + 1;
            at++;
        }
        return column - 1;
    }
}
