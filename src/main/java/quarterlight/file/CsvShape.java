package quarterlight.file;

import org.apache.commons.csv.CSVFormat;

/** The shapes of CSV that the program reads (RFC 4180 but for the delimiter). */
public final class CsvShape {
    private CsvShape() {}

    /** Values between commas below one row of names; empty lines are passed over. */
    public static CSVFormat withHeader() {
        return CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    }

    /** As {@link #withHeader}, and lines that begin with {@code #} are remarks: lists of our own. */
    public static CSVFormat withHeaderAndRemarks() {
        return withHeader().builder().setCommentMarker('#').get();
    }

    /** A table that somebody typed: every line is a row, also an empty one, so that faults name their line. */
    public static CSVFormat withEveryLine(char delimiter) {
        return CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter)
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(true)
                .get();
    }
}
