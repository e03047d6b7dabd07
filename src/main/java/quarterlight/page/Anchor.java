package quarterlight.page;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * By what a page is tied to the evidence behind it.
 *
 * @param logHead number and hash of the last entry of the visit's edit log
 * @param key fingerprint of the inspector's signing key
 * @param archive the archive made last, with its hash, in a few words
 */
public record Anchor(Optional<String> logHead, Optional<String> key, Optional<String> archive) {
    /** Nothing ties it. */
    public static final Anchor NONE = new Anchor(Optional.empty(), Optional.empty(), Optional.empty());

    private static final int GROUP = 16;

    public Anchor {
        Objects.requireNonNull(logHead, "logHead");
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(archive, "archive");
    }

    /** All of it, hashes in groups of 16 digits so that people can compare them. */
    public String text() {
        List<String> parts = new ArrayList<>();
        archive.ifPresent(hash -> parts.add(say("diagram.anchor.archive", hash)));
        key.ifPresent(print -> parts.add(say("diagram.anchor.signing-key", print)));
        logHead.ifPresent(head -> parts.add(say("diagram.anchor.edit-log", head)));
        return String.join(". ", parts)
                .replaceAll("([0-9a-f]{" + GROUP + "})(?=[0-9a-f])", "$1 ")
                .strip();
    }
}
