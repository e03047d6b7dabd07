package quarterlight.archive.signature;

import static quarterlight.language.Sentences.say;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import quarterlight.units.Days;

/**
 * What a signature says to who looks at an archive here: whose key it is, as far as that can be known on this computer.
 *
 * @param check the signature itself
 * @param own the key of this computer, if it has one
 * @param wanted the fingerprint that it shall have, as someone typed it
 */
public record SignatureVerdict(SignatureCheck check, Optional<PublicHalf> own, Optional<String> wanted) {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm '(UTC'xxx')'", Locale.US);

    public SignatureVerdict {
        Objects.requireNonNull(check, "check");
        Objects.requireNonNull(own, "own");
        Objects.requireNonNull(wanted, "wanted");
    }

    /** Whose key it is. */
    public enum Whose {
        /** The one that was asked for. */
        WANTED("wanted"),
        /** Another than was asked for. */
        ANOTHER("another"),
        /** The one in the settings of this computer. */
        OWN("own"),
        /** One that this computer cannot tell anything of. */
        UNKNOWN("unknown");

        private final String word;

        Whose(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** Empty where there is no key that can be read. */
    public Optional<Whose> whose() {
        return check.key().map(key -> {
            if (wanted.isPresent()) {
                return plain(wanted.get()).equals(key.fingerprint()) ? Whose.WANTED : Whose.ANOTHER;
            }
            return own.equals(Optional.of(key)) ? Whose.OWN : Whose.UNKNOWN;
        });
    }

    /** Digits as they are compared: people group them, and write capitals. */
    private static String plain(String typed) {
        return typed.replaceAll("[\\s:.-]", "").toLowerCase(Locale.ROOT);
    }

    /** Whether nothing speaks against the archive: a good signature by no other key than was asked for, or none where none was asked for. */
    public boolean ok() {
        return wanted.isPresent()
                ? check.isGood() && whose().equals(Optional.of(Whose.WANTED))
                : check.state() != SignatureCheck.State.BAD;
    }

    /** One or two sentences. */
    public String text() {
        return switch (check.state()) {
            case NONE -> say(wanted.isPresent() ? "archived.verdict.none-named" : "archived.verdict.none");
            case BAD -> say("archived.verdict.bad", check.why());
            case GOOD -> good();
        };
    }

    /** A time as people read it; what is none stands as it is. */
    private static String said(String at) {
        try {
            OffsetDateTime time = OffsetDateTime.parse(at);
            return Days.day(time) + ", " + MINUTE.format(time);
        } catch (DateTimeParseException e) {
            return at;
        }
    }

    private String good() {
        String said = say("archived.verdict.good")
                + check.signer().map(name -> say("archived.verdict.by", name)).orElse("")
                + check.time().map(at -> say("archived.verdict.at", said(at))).orElse("");
        String print = check.key().map(PublicHalf::fingerprint).orElse("");
        return said
                + switch (whose().orElse(Whose.UNKNOWN)) {
                    case WANTED -> say("archived.verdict.wanted");
                    case ANOTHER -> say("archived.verdict.another", print);
                    case OWN -> say("archived.verdict.own");
                    case UNKNOWN -> say("archived.verdict.unknown", print);
                };
    }
}
