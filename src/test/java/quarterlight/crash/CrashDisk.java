package quarterlight.crash;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A model of a disk that keeps of a file only what was forced, and of a folder only the names that stood in it when it was forced: the
 * least that POSIX promises. It shows what may lie on the disk after a power cut.
 */
final class CrashDisk {
    /** What the cut took. */
    enum Cut {
        /** Nothing: the process was killed, the system went on. */
        KILLED,
        /** Whatever was not forced, contents and names. */
        ONLY_FORCED,
        /** Contents that were not forced; the names were written early, as journals of file systems do. */
        NAMES_FIRST,
        /** The names that were not forced; contents were written early. */
        CONTENTS_FIRST,
        /** The second half of what was last written to each file since it was forced. */
        TORN
    }

    private static final class Node {
        private final boolean folder;
        private byte[] content = new byte[0];
        private byte[] forced = new byte[0];
        private long changes;
        private final Map<String, Node> names = new TreeMap<>();
        private Map<String, Node> forcedNames = new TreeMap<>();

        Node(boolean folder) {
            this.folder = folder;
        }
    }

    private final Path world;
    private final Node root = new Node(true);

    /** A disk on which all that lies in the folder now is safe. */
    CrashDisk(Path world) throws IOException {
        this.world = world;
        read(world, root);
    }

    private static void read(Path folder, Node node) throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            for (Path each : found.toList()) {
                Node made = new Node(Files.isDirectory(each));
                node.names.put(each.getFileName().toString(), made);
                if (made.folder) {
                    read(each, made);
                } else {
                    made.content = Files.readAllBytes(each);
                    made.forced = made.content;
                }
            }
        }
        node.forcedNames = new TreeMap<>(node.names);
    }

    void apply(Step step) {
        switch (step.kind()) {
            case CREATE -> parent(step.path()).names.computeIfAbsent(name(step.path()), n -> new Node(false));
            case MAKE_FOLDER -> parent(step.path()).names.put(name(step.path()), new Node(true));
            case TRUNCATE -> {
                Node node = node(step.path());
                node.content = Arrays.copyOf(node.content, (int) step.offset());
                node.changes++;
            }
            case WRITE -> write(node(step.path()), step.offset(), step.bytes());
            case COPY ->
                write(
                        node(step.target()),
                        step.offset(),
                        Arrays.copyOfRange(
                                node(step.path()).content, (int) step.offset(), (int) step.offset() + step.count()));
            case DELETE -> parent(step.path()).names.remove(name(step.path()));
            case RENAME -> {
                Node moved = parent(step.path()).names.remove(name(step.path()));
                parent(step.target()).names.put(name(step.target()), Objects.requireNonNull(moved, "moved"));
            }
            case LINK -> parent(step.target()).names.put(name(step.target()), node(step.path()));
            case FORCE -> {
                Node node = node(step.path());
                node.forced = node.content;
                node.forcedNames = new TreeMap<>(node.names);
            }
            case SAY -> {}
        }
    }

    private static void write(Node node, long offset, byte[] bytes) {
        int end = (int) offset + bytes.length;
        node.content = Arrays.copyOf(node.content, Math.max(end, node.content.length));
        System.arraycopy(bytes, 0, node.content, (int) offset, bytes.length);
        node.changes++;
    }

    private Node node(Path path) {
        return find(path).orElseThrow(() -> new AssertionError("the model of the disk has no " + path));
    }

    private Node parent(Path path) {
        return node(path.getParent());
    }

    private static String name(Path path) {
        return path.getFileName().toString();
    }

    private Optional<Node> find(Path path) {
        Node node = root;
        if (!path.equals(world)) {
            for (Path part : world.relativize(path)) {
                node = node == null ? null : node.names.get(part.toString());
            }
        }
        return Optional.ofNullable(node);
    }

    /** Changes whenever the image would. */
    String signature(Cut cut) {
        StringBuilder text = new StringBuilder();
        sign(root, cut, text);
        return text.toString();
    }

    private static void sign(Node node, Cut cut, StringBuilder text) {
        names(node, cut).forEach((name, each) -> {
            text.append(name).append('/').append(System.identityHashCode(each));
            if (each.folder) {
                sign(each, cut, text.append('{'));
                text.append('}');
            } else {
                text.append(':')
                        .append(
                                cut == Cut.ONLY_FORCED || cut == Cut.NAMES_FIRST
                                        ? System.identityHashCode(each.forced)
                                        : each.changes)
                        .append(';');
            }
        });
    }

    private static Map<String, Node> names(Node node, Cut cut) {
        return cut == Cut.ONLY_FORCED || cut == Cut.CONTENTS_FIRST ? node.forcedNames : node.names;
    }

    private static byte[] content(Node node, Cut cut) {
        return switch (cut) {
            case KILLED, CONTENTS_FIRST -> node.content;
            case ONLY_FORCED, NAMES_FIRST -> node.forced;
            case TORN -> torn(node);
        };
    }

    /** Of the bytes that differ from what was forced, the first half. */
    private static byte[] torn(Node node) {
        int first = Arrays.mismatch(node.forced, node.content);
        if (first < 0) {
            return node.content;
        }
        int middle = first + (node.content.length - first) / 2;
        byte[] torn = Arrays.copyOf(node.forced, Math.max(middle, node.forced.length));
        System.arraycopy(node.content, first, torn, first, middle - first);
        return torn;
    }

    /** Writes what may lie on the disk; the index of the write-ahead log, which is memory of running processes, stays out. */
    void image(Cut cut, Path into) throws IOException {
        write(root, cut, Files.createDirectories(into));
    }

    private static void write(Node node, Cut cut, Path folder) throws IOException {
        for (Map.Entry<String, Node> each : names(node, cut).entrySet()) {
            Path path = folder.resolve(each.getKey());
            if (each.getValue().folder) {
                write(each.getValue(), cut, Files.createDirectory(path));
            } else if (!each.getKey().endsWith("-shm")) {
                Files.write(path, content(each.getValue(), cut));
            }
        }
    }
}
