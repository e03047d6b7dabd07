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
import quarterlight.photo.decode.Pictures;

/**
 * The worker: a process that decodes what it is asked to, one file after the other, and ends with its input. It reads requests from standard input and
 * answers on standard output, each a length and as many bytes; pixels go through a file. {@code WorkerMain MEMORY_MB PIXEL_FILE}.
 */
public final class WorkerMain {
    private static final int MAX_REQUEST_BYTES = 16 << 20;
    private static final int BUFFER_BYTES = 1 << 16;
    /** What a worker takes before it has a picture in hand. */
    private static final int WITHOUT_PICTURE_MB = 64;

    private WorkerMain() {}

    public static void main(String[] args) throws IOException {
        Path pixels = Path.of(args[1]);
        System.setOut(new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8));
        try (DataInputStream in = new DataInputStream(
                        new BufferedInputStream(new FileInputStream(FileDescriptor.in), BUFFER_BYTES));
                DataOutputStream out = new DataOutputStream(
                        new BufferedOutputStream(new FileOutputStream(FileDescriptor.out), BUFFER_BYTES))) {
            Pictures.prepare();
            long memoryMb = Long.parseLong(args[0]);
            MemoryWatch.start(memoryMb << 20);
            serve(in, out, new WorkerTasks(pixels, memoryMb - WITHOUT_PICTURE_MB << 20));
        } finally {
            Files.deleteIfExists(pixels);
        }
    }

    private static void serve(DataInputStream in, DataOutputStream out, WorkerTasks tasks) throws IOException {
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
            WorkerTasks.Answered answered = tasks.answer(request);
            out.writeInt(answered.bytes().length);
            out.write(answered.bytes());
            out.flush();
            if (answered.last()) {
                return;
            }
        }
    }
}
