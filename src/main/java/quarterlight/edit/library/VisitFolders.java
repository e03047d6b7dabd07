package quarterlight.edit.library;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.EnumSet;
import java.util.Map;
import java.util.TreeMap;
import quarterlight.store.folder.VisitFolder;

/** Finds visits at and below folders. Links are not followed, and nothing is looked for within a visit. */
final class VisitFolders {
    private static final int MAX_DEPTH = 8;

    private VisitFolders() {}

    /** The visits by their folders, absolute, with a stamp that changes when the database does. */
    static Map<Path, String> below(Path folder) throws IOException {
        Map<Path, String> found = new TreeMap<>();
        Path top = folder.toAbsolutePath().normalize();
        Files.walkFileTree(
                top, EnumSet.noneOf(java.nio.file.FileVisitOption.class), MAX_DEPTH, new SimpleFileVisitor<>() {
                    @Override
                    public FileVisitResult preVisitDirectory(Path here, BasicFileAttributes attributes)
                            throws IOException {
                        if (!here.equals(top) && here.getFileName().toString().startsWith(".")) {
                            return FileVisitResult.SKIP_SUBTREE;
                        }
                        Path database = new VisitFolder(here).database();
                        if (Files.isRegularFile(database)) {
                            found.put(here, stamp(database) + stamp(here.resolve(database.getFileName() + "-wal")));
                            return FileVisitResult.SKIP_SUBTREE;
                        }
                        return FileVisitResult.CONTINUE;
                    }

                    @Override
                    public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
                        if (file.equals(top)) {
                            throw e;
                        }
                        return FileVisitResult.CONTINUE;
                    }
                });
        return found;
    }

    private static String stamp(Path file) {
        try {
            BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
            return attributes.size() + "@" + attributes.lastModifiedTime().toMillis() + ";";
        } catch (IOException e) {
            return "-;";
        }
    }
}
