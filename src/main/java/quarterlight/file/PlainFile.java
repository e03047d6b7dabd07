package quarterlight.file;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads small files whole. A pipe or a device, which may never end or never begin, is not read: nobody waits for it. */
public final class PlainFile {
    private PlainFile() {}

    /** Something that has a name and is no file, or is longer than what is read whole. */
    public static final class Unsuitable extends FileSystemException {
        private static final long serialVersionUID = 1L;

        Unsuitable(Path file, String reason) {
            super(file.toString(), null, reason);
        }
    }

    /**
     * @throws Unsuitable if it is a folder, pipe, socket or device, or has more bytes than allowed
     * @throws NoSuchFileException if nothing is there
     */
    public static byte[] bytes(Path file, int maxBytes) throws IOException {
        requirePlain(file);
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(maxBytes);
            if (in.read() >= 0) {
                throw new Unsuitable(file, say("cell.file.longer", maxBytes));
            }
            return bytes;
        }
    }

    /** The same, as text in UTF-8; {@link java.nio.charset.CharacterCodingException} if it is none. */
    public static String text(Path file, int maxBytes) throws IOException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes(file, maxBytes)))
                .toString();
    }

    /** @throws Unsuitable if something is there that is no file */
    public static void requirePlain(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new Unsuitable(file, say("cell.file.is-folder"));
        }
        if (!Files.isRegularFile(file)) {
            if (Files.exists(file)) {
                throw new Unsuitable(file, say("cell.file.device"));
            }
            throw new NoSuchFileException(file.toString());
        }
    }
}
