package quarterlight.table;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import quarterlight.file.PlainFile;
import quarterlight.table.drawn.DrawnReader;
import quarterlight.table.workbook.Workbook;
import quarterlight.table.workbook.WorkbookRefused;

/** What a table is read from: the bytes of a text file, or a sheet of a workbook as CSV text. Read once, tried as several kinds. */
public final class TableSource {
    /** Files above this length are refused: a visit's tables have some kilobytes. */
    static final long MAX_BYTES = 32L << 20;

    private final String name;
    private final byte[] bytes;

    private TableSource(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
    }

    /** @throws TableUnreadable if the file is not there, is no file, may not be read, is too large or is a workbook that cannot be taken */
    public static TableSource of(Path file) throws TableUnreadable {
        return of(file, Optional.empty());
    }

    /**
     * The same.
     *
     * @param sheet of a workbook, by its name; may be left out where only one holds anything
     */
    public static TableSource of(Path file, Optional<String> sheet) throws TableUnreadable {
        byte[] bytes = bytes(file);
        String name = file.getFileName() == null
                ? file.toString()
                : file.getFileName().toString();
        boolean workbook = Workbook.isOne(bytes);
        if (!workbook && sheet.isPresent()) {
            throw new TableUnreadable(file, say("cell.file.no-sheets"));
        }
        return new TableSource(name, workbook ? sheet(file, bytes, sheet) : bytes);
    }

    private static byte[] sheet(Path file, byte[] bytes, Optional<String> sheet) throws TableUnreadable {
        try {
            return Workbook.csv(file, Arrays.copyOf(bytes, Math.min(8, bytes.length)), sheet)
                    .getBytes(StandardCharsets.UTF_8);
        } catch (WorkbookRefused e) {
            throw new TableUnreadable(file, e.getMessage(), e.sheets());
        } catch (IOException e) {
            throw new TableUnreadable(file, say("cell.file.damaged"));
        }
    }

    String name() {
        return name;
    }

    public byte[] bytes() {
        return bytes.clone();
    }

    /** The table of one kind: of a document of drawings its rows of that kind, else all there is. */
    byte[] bytes(String kind) {
        if (!DrawnReader.isOne(bytes)) {
            return bytes.clone();
        }
        try {
            return DrawnReader.csv(bytes, kind)
                    .map(csv -> csv.getBytes(StandardCharsets.UTF_8))
                    .orElseGet(bytes::clone);
        } catch (IOException e) {
            return bytes.clone();
        }
    }

    private static byte[] bytes(Path file) throws TableUnreadable {
        try {
            if (Files.isDirectory(file)) {
                throw new TableUnreadable(file, say("cell.file.folder"));
            }
            if (Files.isRegularFile(file) && Files.size(file) > MAX_BYTES) {
                throw new TableUnreadable(file, say("cell.file.large", (MAX_BYTES >> 20)));
            }
            return PlainFile.bytes(file, (int) MAX_BYTES);
        } catch (PlainFile.Unsuitable e) {
            throw new TableUnreadable(file, e.getReason());
        } catch (NoSuchFileException e) {
            throw new TableUnreadable(file, say("cell.file.missing"));
        } catch (AccessDeniedException e) {
            throw new TableUnreadable(file, say("cell.file.access"));
        } catch (IOException e) {
            throw new TableUnreadable(file, say("cell.file.disk", e.getMessage()));
        }
    }
}
