package quarterlight.table;

import static quarterlight.language.Sentences.say;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The text of a table's bytes: UTF-8, with or without a byte order mark; anything else is refused with its line. */
public final class TableText {
    private static final int[] UTF8_MARK = {0xEF, 0xBB, 0xBF};

    private TableText() {}

    /** @throws Unreadable if the bytes are no UTF-8 text */
    public static String of(byte[] bytes) throws Unreadable {
        if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
            throw new Unreadable(1, say("cell.file.utf16"));
        }
        if (startsWith(bytes, 'P', 'K', 3, 4)) {
            throw new Unreadable(1, say("cell.file.packed"));
        }
        int start = startsWith(bytes, UTF8_MARK) ? UTF8_MARK.length : 0;
        for (int i = start; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                throw new Unreadable(lineAt(bytes, i), say("cell.file.zero"));
            }
        }
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer out = CharBuffer.allocate(bytes.length - start);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(in, out, true);
        if (result.isError()) {
            throw new Unreadable(
                    lineAt(bytes, in.position()), say("cell.file.byte", String.format("%02X", bytes[in.position()])));
        }
        return out.flip().toString();
    }

    private static boolean startsWith(byte[] bytes, int... wanted) {
        if (bytes.length < wanted.length) {
            return false;
        }
        for (int i = 0; i < wanted.length; i++) {
            if ((bytes[i] & 0xFF) != wanted[i]) {
                return false;
            }
        }
        return true;
    }

    /** The line of a byte, counted from 1; a line ends with LF, CR LF or CR. */
    private static int lineAt(byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            if (bytes[i] == '\n' || bytes[i] == '\r' && (i + 1 == bytes.length || bytes[i + 1] != '\n')) {
                line++;
            }
        }
        return line;
    }

    /** A table as a whole cannot be read; the line where that shows. */
    public static final class Unreadable extends Exception {
        private final int line;
        private final Optional<String> column;

        public Unreadable(int line, String reason) {
            super(reason);
            this.line = line;
            this.column = Optional.empty();
        }

        public Unreadable(int line, String column, String reason) {
            super(reason);
            this.line = line;
            this.column = Optional.of(column);
        }

        TableRead.Refused refused() {
            return new TableRead.Refused(line, column, getMessage());
        }
    }
}
