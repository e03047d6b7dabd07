package quarterlight.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.task.Progress;
import quarterlight.visit.photo.Sha256;

/**
 * What became of an archive since it was made, and of the originals in it since they were taken in.
 *
 * @param changed files that are not what the manifests say, and originals that are not what intake found; paths within the archive
 * @param missing files that are gone
 * @param unlisted files that were added later
 * @param faults what else breaks the rules of a bag, in sentences
 * @param files how many files of the payload were read
 * @param originals how many originals it shall hold; none if it was made for the buyer
 */
public record ArchiveAudit(
        List<String> changed,
        List<String> missing,
        List<String> unlisted,
        List<String> faults,
        int files,
        int originals) {
    private static final String PHOTOS = "data/tables/photos.json";
    private static final int MAX_BYTES = 64 << 20;

    public ArchiveAudit {
        changed = List.copyOf(changed);
        missing = List.copyOf(missing);
        unlisted = List.copyOf(unlisted);
        faults = List.copyOf(faults);
    }

    public boolean ok() {
        return changed.isEmpty() && missing.isEmpty() && unlisted.isEmpty() && faults.isEmpty();
    }

    /**
     * Reads every file of an archive.
     *
     * @throws BagRefused if it is no archive
     * @throws java.util.concurrent.CancellationException if the progress is cancelled
     */
    public static ArchiveAudit of(Path file, Progress progress) throws BagRefused, IOException {
        ByteArrayOutputStream photos = new ByteArrayOutputStream();
        try (BagFile bag = BagFile.open(file)) {
            BagCheck check =
                    bag.check(path -> path.equals(PHOTOS) ? Optional.of(limited(photos)) : Optional.empty(), progress);
            return of(check, photos.toByteArray());
        }
    }

    /**
     * What became of an archive that was read.
     *
     * @param photos its table of photos as JSON; empty if it has none
     */
    public static ArchiveAudit of(BagCheck check, byte[] photos) throws IOException {
        List<String> changed = new ArrayList<>(check.changed());
        List<String> missing = new ArrayList<>(check.missing());
        int originals = 0;
        for (JsonNode photo : photos(photos)) {
            if (photo.hasNonNull("stored")) {
                originals++;
                compare(photo, check, changed, missing);
            }
        }
        return new ArchiveAudit(
                changed,
                missing,
                check.unlisted(),
                check.faults(),
                check.hashes().size(),
                originals);
    }

    /** A table that is no JSON was changed, and its hash says so. */
    private static Iterable<JsonNode> photos(byte[] json) throws IOException {
        try {
            return json.length == 0
                    ? List.of()
                    : new ObjectMapper().readTree(json).path("photos");
        } catch (JsonProcessingException e) {
            return List.of();
        }
    }

    private static void compare(JsonNode photo, BagCheck check, List<String> changed, List<String> missing) {
        String path = BagPath.PAYLOAD + photo.path("stored").asText();
        Optional<String> found = Optional.ofNullable(check.hashes().get(path)).map(Sha256::hex);
        if (found.isEmpty()) {
            if (!missing.contains(path) && !changed.contains(path)) {
                missing.add(path);
            }
        } else if (!found.get().equals(photo.path("sha256").asText()) && !changed.contains(path)) {
            changed.add(path);
        }
    }

    /** Keeps what fits; a longer table is no table of a visit. */
    private static OutputStream limited(ByteArrayOutputStream kept) {
        return new FilterOutputStream(kept) {
            @Override
            public void write(byte[] buffer, int from, int count) {
                if (kept.size() + count <= MAX_BYTES) {
                    kept.write(buffer, from, count);
                }
            }
        };
    }
}
