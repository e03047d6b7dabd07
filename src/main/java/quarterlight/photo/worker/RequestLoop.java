package quarterlight.photo.worker;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The worker's side of its connection with the program: requests from standard input, answers on standard output, each a length and as many bytes. It ends
 * with its input, with the program, or when it takes more memory than it may.
 */
public final class RequestLoop {
    private static final int MAX_REQUEST_BYTES = 16 << 20;
    private static final int BUFFER_BYTES = 1 << 16;

    private RequestLoop() {}

    /**
     * An answer.
     *
     * @param last whether the worker must end after it
     */
    @SuppressWarnings("ArrayRecordComponent")
    public record Answered(byte[] bytes, boolean last) {}

    /** What a worker does with a request. */
    @FunctionalInterface
    public interface Tasks {
        /** @throws IOException if the request cannot be read, which ends the worker */
        Answered answer(byte[] request) throws IOException;
    }

    /** Makes a worker ready; native libraries are loaded here, before the watch over its memory begins. */
    @FunctionalInterface
    public interface Preparing {
        /** @param own a file of this worker's own, removed at its end */
        Tasks ready(Path own, long memoryMb);
    }

    /** @param args as {@link WorkerCommand} gives them: the limit on memory in MB, and the worker's own file */
    public static void run(String[] args, Preparing preparing) throws IOException {
        Path own = Path.of(args[1]);
        System.setOut(new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8));
        try (DataInputStream in = new DataInputStream(
                        new BufferedInputStream(new FileInputStream(FileDescriptor.in), BUFFER_BYTES));
                DataOutputStream out = new DataOutputStream(
                        new BufferedOutputStream(new FileOutputStream(FileDescriptor.out), BUFFER_BYTES))) {
            long memoryMb = Long.parseLong(args[0]);
            Tasks tasks = preparing.ready(own, memoryMb);
            MemoryWatch.start(memoryMb << 20);
            serve(in, out, tasks);
        } finally {
            Files.deleteIfExists(own);
        }
    }

    private static void serve(DataInputStream in, DataOutputStream out, Tasks tasks) throws IOException {
        while (true) {
            int length;
            try {
                length = in.readInt();
            } catch (EOFException e) {
                return;
            }
            if (length < 0 || length > MAX_REQUEST_BYTES) {
                return;
            }
            byte[] request = new byte[length];
            in.readFully(request);
            Answered answered = tasks.answer(request);
            out.writeInt(answered.bytes().length);
            out.write(answered.bytes());
            out.flush();
            if (answered.last()) {
                return;
            }
        }
    }
}
