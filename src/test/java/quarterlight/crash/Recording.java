package quarterlight.crash;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.OwnProcess;

/**
 * Runs the program in a process of its own and records what it asks of the disk, by {@code strace}: every write with its bytes, every
 * rename, deletion and force, of Java and of the database library alike, and what it says on standard output. Linux only.
 */
final class Recording {
    private static final String CALLS = "openat,open,creat,write,pwrite64,writev,pwritev,ftruncate,truncate,fallocate,"
            + "rename,renameat,renameat2,unlink,unlinkat,mkdir,mkdirat,rmdir,fsync,fdatasync,sendfile,copy_file_range,"
            + "lseek,link,linkat,symlink,symlinkat,msync";
    /** {@code PID call(arguments) = result}. */
    private static final Pattern CALL = Pattern.compile("(\\w+)\\((.*)\\)\\s+= (-?\\d+|\\?).*", Pattern.DOTALL);

    private static final Pattern STRING = Pattern.compile("\"((?:\\\\x[0-9a-f]{2})*)\"");
    private static final Pattern OPEN_FILE = Pattern.compile("(\\d+)<((?:\\\\x[0-9a-f]{2})*)>");
    private static final String UNFINISHED = " <unfinished ...>";
    private static final Pattern RESUMED = Pattern.compile("<\\.\\.\\. \\w+ resumed>(.*)", Pattern.DOTALL);

    private final Path world;
    private final List<Step> steps = new ArrayList<>();
    private final Map<String, Long> positions = new HashMap<>();
    private final Map<String, String> begun = new HashMap<>();

    private Recording(Path world) {
        this.world = world;
    }

    /** What a call of the program did. */
    record Run(List<Step> steps, int status, String err) {}

    static boolean isPossible() {
        try {
            return new ProcessBuilder("strace", "-f", "--seccomp-bpf", "-o", "/dev/null", "true")
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /**
     * Runs a call.
     *
     * @param world the folder within which changes count; the home of the user lies in it
     * @param scratch a folder outside of it
     */
    static Run of(Path world, Path scratch, String... arguments) throws IOException, InterruptedException {
        Path log = scratch.resolve("strace.log");
        Path err = scratch.resolve("err.txt");
        List<String> command = new ArrayList<>(List.of(
                "strace",
                "-f",
                "--seccomp-bpf",
                "-y",
                "-xx",
                "-s",
                "100000000",
                "-e",
                "signal=none",
                "-e",
                "trace=" + CALLS,
                "-o",
                log.toString()));
        command.addAll(OwnProcess.program(world.resolve("home"), arguments));
        Process process = new ProcessBuilder(command)
                .redirectOutput(scratch.resolve("out.txt").toFile())
                .redirectError(err.toFile())
                .start();
        if (!process.waitFor(4, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new AssertionError("no end of " + String.join(" ", arguments));
        }
        Recording recording = new Recording(world);
        try (BufferedReader lines = Files.newBufferedReader(log, StandardCharsets.ISO_8859_1)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                recording.read(line);
            }
        }
        return new Run(List.copyOf(recording.steps), process.exitValue(), Files.readString(err));
    }

    /** What lines of such a record say was done within the world. */
    static List<Step> steps(Path world, List<String> lines) {
        Recording recording = new Recording(world);
        lines.forEach(recording::read);
        return List.copyOf(recording.steps);
    }

    private void read(String line) {
        int blank = line.indexOf(' ');
        String thread = line.substring(0, blank);
        String text = line.substring(blank).strip();
        if (text.endsWith(UNFINISHED)) {
            begun.put(thread, text.substring(0, text.length() - UNFINISHED.length()));
            return;
        }
        Matcher resumed = RESUMED.matcher(text);
        if (resumed.matches()) {
            text = begun.getOrDefault(thread, "") + resumed.group(1);
        }
        Matcher call = CALL.matcher(text);
        if (call.matches() && !call.group(3).startsWith("-") && !call.group(3).equals("?")) {
            take(call.group(1), call.group(2), Long.parseLong(call.group(3)));
        }
    }

    private void take(String call, String arguments, long result) {
        switch (call) {
            case "openat", "open", "creat" -> opened(arguments, result);
            case "write", "pwrite64" -> written(call, arguments, (int) result);
            case "lseek" -> positions.put(place(file(arguments)), result);
            case "ftruncate" -> {
                Path path = decodedPath(file(arguments)[1]);
                if (isInWorld(path)) {
                    steps.add(new Step(Step.Kind.TRUNCATE, path, path, lastNumber(arguments), new byte[0], 0));
                }
            }
            case "fsync", "fdatasync" -> add(Step.Kind.FORCE, decodedPath(file(arguments)[1]));
            case "mkdir", "mkdirat" ->
                add(Step.Kind.MAKE_FOLDER, strings(arguments).get(0));
            case "unlink", "unlinkat", "rmdir" ->
                add(Step.Kind.DELETE, strings(arguments).get(0));
            case "rename", "renameat", "renameat2" -> {
                List<Path> paths = strings(arguments);
                if (isInWorld(paths.get(0)) || isInWorld(paths.get(1))) {
                    steps.add(new Step(Step.Kind.RENAME, paths.get(0), paths.get(1), 0, new byte[0], 0));
                }
            }
            case "link", "linkat" -> {
                List<Path> paths = strings(arguments);
                if (isInWorld(paths.get(1))) {
                    steps.add(new Step(Step.Kind.LINK, paths.get(0), paths.get(1), 0, new byte[0], 0));
                }
            }
            case "sendfile" -> copied(new Copy(arguments, 1, 0), (int) result);
            case "copy_file_range" -> copied(new Copy(arguments, 0, 1), (int) result);
            default -> refuse(call, arguments);
        }
    }

    /** A call that the model of the disk does not know must not touch what it stands for. */
    private void refuse(String call, String arguments) {
        List<Path> touched = new ArrayList<>(strings(arguments));
        Matcher file = OPEN_FILE.matcher(arguments);
        while (file.find()) {
            touched.add(decodedPath(file.group(2)));
        }
        for (Path path : touched) {
            if (isInWorld(path) && !path.toString().endsWith("-shm")) {
                throw new AssertionError("the theater does not know " + call + " on " + path);
            }
        }
    }

    private void add(Step.Kind kind, Path path) {
        if (isInWorld(path)) {
            steps.add(Step.of(kind, path));
        }
    }

    private void opened(String arguments, long result) {
        Path path = strings(arguments).get(0);
        positions.put(result + " " + path, 0L);
        if (isInWorld(path)) {
            if (arguments.contains("O_CREAT")) {
                steps.add(Step.of(Step.Kind.CREATE, path));
            }
            if (arguments.contains("O_TRUNC")) {
                steps.add(Step.of(Step.Kind.TRUNCATE, path));
            }
            if (arguments.contains("O_APPEND")) {
                throw new AssertionError("the theater does not know how to append to " + path);
            }
        }
    }

    private void written(String call, String arguments, int result) {
        String[] file = file(arguments);
        Path path = decodedPath(file[1]);
        boolean said = file[0].equals("1") && path.toString().endsWith("out.txt");
        if (!said && !isInWorld(path)) {
            return;
        }
        long offset = call.equals("pwrite64") ? lastNumber(arguments) : positions.getOrDefault(place(file), 0L);
        if (call.equals("write")) {
            positions.put(place(file), offset + result);
        }
        Matcher string = STRING.matcher(arguments);
        if (!string.find()) {
            throw new AssertionError("a write without its bytes");
        }
        byte[] all = decoded(string.group(1));
        byte[] bytes = java.util.Arrays.copyOf(all, result);
        steps.add(new Step(said ? Step.Kind.SAY : Step.Kind.WRITE, path, path, offset, bytes, 0));
    }

    /** What a call copies within the system: two open files, and their places where the call names them. */
    private static final class Copy {
        private static final Pattern PLACE = Pattern.compile("^, \\[(\\d+)");

        private final List<String[]> files = new ArrayList<>();
        private final List<Optional<Long>> places = new ArrayList<>();
        private final int from;
        private final int to;

        /** @param from which of the open files is read, {@code to} which is written */
        Copy(String arguments, int from, int to) {
            this.from = from;
            this.to = to;
            Matcher file = OPEN_FILE.matcher(arguments);
            while (file.find()) {
                files.add(new String[] {file.group(1), file.group(2)});
                Matcher place = PLACE.matcher(arguments.substring(file.end()));
                places.add(place.find() ? Optional.of(Long.parseLong(place.group(1))) : Optional.empty());
            }
        }

        String[] source() {
            return files.get(from);
        }

        String[] target() {
            return files.get(to);
        }
    }

    /** What comes from outside of the world is not known. */
    private void copied(Copy copy, int result) {
        Path target = decodedPath(copy.target()[1]);
        if (result == 0 || !isInWorld(target)) {
            return;
        }
        Path source = decodedPath(copy.source()[1]);
        long at = copy.places.get(copy.from).orElse(positions.getOrDefault(place(copy.source()), 0L));
        long to = copy.places.get(copy.to).orElse(positions.getOrDefault(place(copy.target()), 0L));
        if (at != to || !isInWorld(source)) {
            throw new AssertionError("the theater does not know how to copy from " + source + " to another place");
        }
        steps.add(new Step(Step.Kind.COPY, source, target, to, new byte[0], result));
        if (copy.places.get(copy.to).isEmpty()) {
            positions.put(place(copy.target()), to + result);
        }
        if (copy.places.get(copy.from).isEmpty()) {
            positions.put(place(copy.source()), at + result);
        }
    }

    /** What libraries unpack for themselves is none of what the program keeps. */
    private boolean isInWorld(Path path) {
        return path.startsWith(world)
                && !path.startsWith(world.resolve("home/.quarterlight/libraries"))
                && !path.startsWith(world.resolve("home/.javacpp"))
                && !path.toString().endsWith(" (deleted)")
                && !path.getFileName().toString().startsWith("quarterlight.log");
    }

    private static long lastNumber(String arguments) {
        return Long.parseLong(
                arguments.substring(arguments.lastIndexOf(',') + 1).strip());
    }

    /** Number and encoded path of the open file that stands first. */
    private static String[] file(String arguments) {
        Matcher file = OPEN_FILE.matcher(arguments);
        return file.lookingAt() ? new String[] {file.group(1), file.group(2)} : new String[] {"", ""};
    }

    /** Workers are processes with numbers of their own for open files, so the path belongs to the number. */
    private static String place(String[] file) {
        return file[0] + " " + decodedPath(file[1]);
    }

    private static List<Path> strings(String arguments) {
        List<Path> paths = new ArrayList<>();
        Matcher string = STRING.matcher(arguments);
        while (string.find()) {
            paths.add(decodedPath(string.group(1)));
        }
        return paths;
    }

    private static Path decodedPath(String hex) {
        return Path.of(new String(decoded(hex), StandardCharsets.UTF_8));
    }

    private static byte[] decoded(String hex) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(hex.length() / 4);
        for (int i = 0; i + 4 <= hex.length(); i += 4) {
            bytes.write(Character.digit(hex.charAt(i + 2), 16) << 4 | Character.digit(hex.charAt(i + 3), 16));
        }
        return bytes.toByteArray();
    }
}
