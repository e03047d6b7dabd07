package quarterlight.archive;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.visit.photo.Sha256;

/**
 * What checking a bag found.
 *
 * @param changed files that are not what the manifests say, or that cannot be read; paths within the bag
 * @param missing files that a manifest names and the zip does not hold
 * @param unlisted files of the payload that the manifest does not name
 * @param faults what else breaks the rules of a bag, in sentences
 * @param hashes of the files of the payload as read
 */
public record BagCheck(
        List<String> changed,
        List<String> missing,
        List<String> unlisted,
        List<String> faults,
        Map<String, Sha256> hashes) {
    public BagCheck {
        changed = List.copyOf(changed);
        missing = List.copyOf(missing);
        unlisted = List.copyOf(unlisted);
        faults = List.copyOf(faults);
        hashes = Map.copyOf(hashes);
    }

    /** Whether the bag is valid as RFC 8493, section 3, has it: complete, and every hash right. */
    public boolean ok() {
        return firstProblem().isEmpty();
    }

    /** The first thing that does not hold, with the file that it is about. */
    public Optional<String> firstProblem() {
        if (!changed.isEmpty()) {
            return Optional.of(say("archived.changed", changed.get(0)));
        }
        if (!missing.isEmpty()) {
            return Optional.of(say("archived.missing", missing.get(0)));
        }
        if (!unlisted.isEmpty()) {
            return Optional.of(say("archived.added", unlisted.get(0)));
        }
        return faults.stream().findFirst();
    }
}
