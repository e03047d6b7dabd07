package quarterlight.photo.wire;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The small parts of which messages between the program and its workers consist. */
public final class Wire {
    /** No text or preview is longer; a message that claims more is not read. */
    private static final int MAX_BYTES = 8 << 20;

    private static final int MAX_TEXTS = 1000;

    private Wire() {}

    /** Writes one value. */
    @FunctionalInterface
    public interface Writing<T> {
        void write(DataOutputStream out, T value) throws IOException;
    }

    /** Reads one value. */
    @FunctionalInterface
    public interface Reading<T> {
        T read(DataInputStream in) throws IOException;
    }

    public static <T> void optional(DataOutputStream out, Optional<T> value, Writing<T> writing) throws IOException {
        out.writeBoolean(value.isPresent());
        if (value.isPresent()) {
            writing.write(out, value.get());
        }
    }

    public static <T> Optional<T> optional(DataInputStream in, Reading<T> reading) throws IOException {
        return in.readBoolean() ? Optional.of(reading.read(in)) : Optional.empty();
    }

    public static void bytes(DataOutputStream out, byte[] bytes) throws IOException {
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    public static byte[] bytes(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > MAX_BYTES) {
            throw new IOException("a part of " + length + " bytes");
        }
        byte[] bytes = new byte[length];
        in.readFully(bytes);
        return bytes;
    }

    public static void text(DataOutputStream out, String text) throws IOException {
        bytes(out, text.getBytes(StandardCharsets.UTF_8));
    }

    public static String text(DataInputStream in) throws IOException {
        return new String(bytes(in), StandardCharsets.UTF_8);
    }

    public static void texts(DataOutputStream out, List<String> texts) throws IOException {
        out.writeInt(texts.size());
        for (String text : texts) {
            text(out, text);
        }
    }

    public static List<String> texts(DataInputStream in) throws IOException {
        int count = in.readInt();
        if (count < 0 || count > MAX_TEXTS) {
            throw new IOException(count + " texts");
        }
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            texts.add(text(in));
        }
        return texts;
    }

    /** A local time. */
    static void moment(DataOutputStream out, LocalDateTime time) throws IOException {
        instant(out, time.toInstant(ZoneOffset.UTC));
    }

    static LocalDateTime moment(DataInputStream in) throws IOException {
        return LocalDateTime.ofInstant(instant(in), ZoneOffset.UTC);
    }

    public static void instant(DataOutputStream out, Instant instant) throws IOException {
        out.writeLong(instant.getEpochSecond());
        out.writeInt(instant.getNano());
    }

    public static Instant instant(DataInputStream in) throws IOException {
        return Instant.ofEpochSecond(in.readLong(), in.readInt());
    }

    /** One of a closed list, by its name. */
    public static void kind(DataOutputStream out, Enum<?> kind) throws IOException {
        text(out, kind.name());
    }

    public static <T extends Enum<T>> T kind(DataInputStream in, Class<T> kinds) throws IOException {
        try {
            return Enum.valueOf(kinds, text(in));
        } catch (IllegalArgumentException e) {
            throw new IOException("an unknown kind of " + kinds.getSimpleName(), e);
        }
    }
}
