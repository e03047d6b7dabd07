package quarterlight.archive.signature;

import static quarterlight.language.Sentences.say;

import java.util.Objects;
import java.util.Optional;

/**
 * What became of the signature of an archive.
 *
 * @param state whether it holds
 * @param why what does not hold, as half a sentence; empty if it holds, or there is none
 * @param key the public key that lies in the archive, if it can be read
 * @param signer who signed, as the signer wrote it
 * @param time when, as the clock of the signer's computer had it
 */
public record SignatureCheck(
        State state, String why, Optional<PublicHalf> key, Optional<String> signer, Optional<String> time) {
    /** There is none. */
    public static final SignatureCheck NONE =
            new SignatureCheck(State.NONE, "", Optional.empty(), Optional.empty(), Optional.empty());

    /** Whether a signature holds. */
    public enum State {
        GOOD("good"),
        BAD("bad"),
        NONE("none");

        private final String word;

        State(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public SignatureCheck {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(why, "why");
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(signer, "signer");
        Objects.requireNonNull(time, "time");
    }

    /** A signature that does not hold. */
    public static SignatureCheck bad(String why) {
        return new SignatureCheck(State.BAD, why, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * Checks it.
     *
     * @param key as it lies in the archive
     * @param named the fingerprint that the archive names
     * @param signed what was signed
     * @param signature 64 bytes, if they are any good
     */
    public static SignatureCheck of(
            String key,
            Optional<String> named,
            byte[] signed,
            byte[] signature,
            Optional<String> signer,
            Optional<String> time) {
        Optional<PublicHalf> half = PublicHalf.ofPem(key);
        if (half.isEmpty()) {
            return bad(say("archived.signature.no-key"));
        }
        String why = "";
        if (!named.equals(Optional.of(half.get().fingerprint()))) {
            why = say("archived.signature.other-key");
        } else if (!half.get().holds(signed, signature)) {
            why = say("archived.signature.other-list");
        }
        return new SignatureCheck(why.isEmpty() ? State.GOOD : State.BAD, why, half, signer, time);
    }

    public boolean isGood() {
        return state == State.GOOD;
    }
}
