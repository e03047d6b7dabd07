package quarterlight.ui;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.store.folder.VisitFile;

/** What was dropped, by what is done with it. */
record Dropped(Optional<Path> visit, Optional<Path> drawing, List<Path> words, List<Path> tables, List<Path> photos) {
    static Dropped sorted(List<Path> paths) {
        List<Path> words = new ArrayList<>();
        List<Path> tables = new ArrayList<>();
        List<Path> photos = new ArrayList<>();
        for (Path named : paths) {
            Path path = VisitFile.folderOf(named);
            if (paths.size() == 1 && Files.isRegularFile(path.resolve("visit.db"))) {
                return new Dropped(Optional.of(path), Optional.empty(), List.of(), List.of(), List.of());
            }
            if (paths.size() == 1
                    && path.toString().toLowerCase(java.util.Locale.ROOT).endsWith(".svg")) {
                return new Dropped(Optional.empty(), Optional.of(path), List.of(), List.of(), List.of());
            }
            boolean table = path.toString().toLowerCase(java.util.Locale.ROOT).matches(".*\\.(csv|tsv|txt|xlsx)");
            (WordsImporter.isWords(path) ? words : table ? tables : photos).add(path);
        }
        return new Dropped(Optional.empty(), Optional.empty(), words, tables, photos);
    }
}
