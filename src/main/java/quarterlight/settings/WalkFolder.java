package quarterlight.settings;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import quarterlight.file.DurableFiles;
import quarterlight.file.PlainFile;
import quarterlight.walk.PastWalk;

/**
 * The walks of the user's earlier visits, one small text file each in {@code walks} of the settings folder. A visit is known by its photos, so it
 * counts once although its folder is moved, copied or restored. Any file may be deleted at any time.
 */
public final class WalkFolder {
    private static final String ENDING = ".walk";
    private static final long MAX_BYTES = 4_000_000;

    private final Path folder;

    /** @param settings the settings folder; need not exist */
    public WalkFolder(Path settings) {
        folder = Objects.requireNonNull(settings, "settings").resolve("walks");
    }

    /**
     * What is remembered.
     *
     * @param walks one for each visit
     * @param remarks a sentence for each file that could not be read
     */
    public record Remembered(List<PastWalk> walks, List<String> remarks) {
        public Remembered {
            walks = List.copyOf(walks);
            remarks = List.copyOf(remarks);
        }
    }

    private record Kept(Path file, PastWalk walk) {}

    public Remembered read() {
        List<String> remarks = new ArrayList<>();
        List<PastWalk> walks = kept(remarks).stream().map(Kept::walk).toList();
        return new Remembered(walks, remarks);
    }

    /**
     * Remembers a walk in place of what was remembered of the same visit; forgets it if the walk tells nothing any more.
     *
     * @return a sentence if it could not be written, else nothing
     */
    public List<String> keep(PastWalk walk) {
        List<Kept> same = kept(new ArrayList<>()).stream()
                .filter(kept -> kept.walk().sameVisit(walk))
                .toList();
        try {
            if (!walk.tellsNothing()
                    && same.stream().noneMatch(kept -> kept.walk().equals(walk))) {
                Path file = same.isEmpty() ? unused(walk) : same.get(0).file();
                DurableFiles.text(file, WalkText.of(walk));
                for (Kept kept : same) {
                    if (!kept.file().equals(file)) {
                        Files.deleteIfExists(kept.file());
                    }
                }
            } else if (walk.tellsNothing()) {
                for (Kept kept : same) {
                    Files.deleteIfExists(kept.file());
                }
            }
            return List.of();
        } catch (IOException e) {
            return List.of("The walk of this visit is not remembered for later suggestions: " + folder
                    + " cannot be written. Check its access and its space.");
        }
    }

    /** A name that no other visit has; the first photo may be in several. */
    private Path unused(PastWalk walk) {
        return walk.photos().stream()
                .map(photo -> folder.resolve(photo.digest() + ENDING))
                .filter(file -> !Files.exists(file))
                .findFirst()
                .orElseGet(() -> folder.resolve(
                        walk.photos().get(0).digest() + "-" + walk.photos().size() + ENDING));
    }

    private List<Kept> kept(List<String> remarks) {
        List<Kept> kept = new ArrayList<>();
        for (Path file : files(remarks)) {
            try {
                if (Files.size(file) > MAX_BYTES) {
                    throw new WalkText.Damaged("it is longer than a walk can be");
                }
                kept.add(new Kept(file, WalkText.read(PlainFile.text(file, (int) MAX_BYTES))));
            } catch (NoSuchFileException e) {
                // another program took it away meanwhile: then it is not there
            } catch (CharacterCodingException e) {
                remarks.add(remark(file, "it is not text"));
            } catch (WalkText.Damaged e) {
                remarks.add(remark(file, e.getMessage()));
            } catch (IOException e) {
                remarks.add(remark(file, "it cannot be read"));
            }
        }
        return kept;
    }

    private List<Path> files(List<String> remarks) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            remarks.add("Earlier walks are passed over: " + folder + " cannot be read. Check its access.");
            return List.of();
        }
    }

    private static String remark(Path file, String why) {
        return "The remembered walk " + file + " is passed over: " + why
                + ". Delete the file; suggestions do without it.";
    }
}
