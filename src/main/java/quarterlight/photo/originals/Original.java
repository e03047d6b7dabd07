package quarterlight.photo.originals;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/**
 * The one door to the originals of a visit: every reader gets the place of a file here and nowhere else. What a visit's database says is not trusted:
 * a name that leads out of the folder, a folder that is a link, and anything that is not a plain file are refused.
 * <p>A visit of an earlier schema names its files by the first 12 digits of their digest; such a file is found by that name until it is renamed.
 */
public final class Original {
    private static final String FOLDER = OriginalsFolder.FOLDER + "/";
    private static final Pattern FULL = Pattern.compile("[0-9a-f]{64}-.*", Pattern.DOTALL);

    private Original() {}

    /**
     * Where an original lies.
     *
     * @param visitFolder the folder of the visit
     * @throws OriginalRefused if there is none that may be read
     */
    public static Path of(Path visitFolder, PhotoFile photo) throws OriginalRefused {
        return of(visitFolder, photo.stored(), photo.sha256());
    }

    static Path of(Path visitFolder, String stored, Sha256 sha256) throws OriginalRefused {
        Path originals = folder(visitFolder);
        Path file = within(originals, stored);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            Optional<Path> earlier = earlierName(stored, sha256).map(originals::resolve);
            if (earlier.isEmpty() || !Files.exists(earlier.get(), LinkOption.NOFOLLOW_LINKS)) {
                throw OriginalRefused.missing(file);
            }
            file = earlier.get();
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw OriginalRefused.because(file, "it is a link or no plain file; only plain files are read here");
        }
        return file;
    }

    /** The folder itself, which is never reached by a link. */
    private static Path folder(Path visitFolder) throws OriginalRefused {
        Path originals = Objects.requireNonNull(visitFolder, "visitFolder").resolve(OriginalsFolder.FOLDER);
        if (isLinked(originals)) {
            throw OriginalRefused.because(
                    originals, "it is a link or no folder; put the folder itself back in its place");
        }
        return originals;
    }

    /** Whether something else than a folder stands in its place, such as a link to one. */
    static boolean isLinked(Path originals) {
        return Files.exists(originals, LinkOption.NOFOLLOW_LINKS)
                && !Files.isDirectory(originals, LinkOption.NOFOLLOW_LINKS);
    }

    private static Path within(Path originals, String stored) throws OriginalRefused {
        try {
            String name = stored.startsWith(FOLDER) ? stored.substring(FOLDER.length()) : "";
            boolean plain = !name.isEmpty() && name.indexOf('/') < 0 && name.indexOf('\\') < 0;
            if (plain && !name.equals(".") && !name.equals("..")) {
                Path file = originals.resolve(name);
                if (originals.equals(file.getParent())) {
                    return file;
                }
            }
        } catch (InvalidPathException e) {
            throw OriginalRefused.because(originals, "the visit names a file that this computer cannot have", e);
        }
        throw OriginalRefused.because(originals, "the visit names a file outside of it, which is not read");
    }

    /** The paths within the visit folder under which a file may lie: the one the visit names, and the one an earlier schema gave it. */
    public static List<String> names(PhotoFile photo) {
        return Stream.concat(
                        Stream.of(photo.stored()),
                        earlierName(photo.stored(), photo.sha256()).map(name -> FOLDER + name).stream())
                .toList();
    }

    /** The name within the folder that an earlier schema gave to a file that now bears its full digest. */
    private static Optional<String> earlierName(String stored, Sha256 sha256) {
        String name = stored.startsWith(FOLDER) ? stored.substring(FOLDER.length()) : "";
        return FULL.matcher(name).matches() && name.startsWith(sha256.hex())
                ? Optional.of(sha256.prefix() + name.substring(sha256.hex().length()))
                : Optional.empty();
    }
}
