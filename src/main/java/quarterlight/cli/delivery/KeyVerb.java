package quarterlight.cli.delivery;

import java.io.IOException;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.archive.signature.PublicHalf;
import quarterlight.archive.signature.SigningKeyFile;
import quarterlight.archive.signature.SigningKeyProblem;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Passphrase;
import quarterlight.cli.call.Verb;
import quarterlight.table.json.JsonObject;

/** {@code key}: the key that signs archives; its fingerprint to hand out, and its passphrase. */
public final class KeyVerb implements Verb {
    private static final String LOCK = "--lock";
    private static final String UNLOCK = "--unlock";
    private static final String NEW = "--new-passphrase-file";

    private final CliContext around;

    public KeyVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("key", "show the key that signs archives, made on first use; keep it under a passphrase")
                .addOption(flag(LOCK, "keep it under a new passphrase"))
                .addOption(flag(UNLOCK, "keep it without a passphrase"))
                .addOption(Passphrase.option())
                .addOption(
                        CliOptions.text(NEW, "FILE", "with " + LOCK + ": holds the new passphrase in its first line"))
                .addOption(CliOptions.json());
    }

    private static OptionSpec flag(String name, String description) {
        return OptionSpec.builder(name)
                .type(boolean.class)
                .description(description)
                .build();
    }

    @Override
    public int run(ParseResult call) throws CallRefused, IOException {
        if (call.hasMatchedOption(LOCK) && call.hasMatchedOption(UNLOCK)) {
            throw new CallRefused("key: " + LOCK + " and " + UNLOCK + " exclude each other; take one of them");
        }
        SigningKeyFile file = new SigningKeyFile(around.settings());
        try {
            if (!file.exists()) {
                file.key(Optional.empty());
            }
            if (call.hasMatchedOption(LOCK)) {
                file.lock(Passphrase.present(call, around), Optional.of(Passphrase.fresh(call, NEW)));
            } else if (call.hasMatchedOption(UNLOCK)) {
                file.lock(Passphrase.present(call, around), Optional.empty());
            }
        } catch (SigningKeyProblem e) {
            throw new CallRefused(e.getMessage());
        }
        PublicHalf open = file.open()
                .orElseThrow(() -> new CallRefused(file.path() + " cannot be read as a key; put back a copy of it"));
        around.console()
                .print(
                        CliOptions.isJson(call)
                                ? new JsonObject()
                                        .put("fingerprint", open.fingerprint())
                                        .put("public_key", open.pem())
                                        .put("passphrase", file.isLocked())
                                        .put("file", file.path())
                                        .text()
                                : report(file, open));
        return Exit.DONE;
    }

    private static String report(SigningKeyFile file, PublicHalf open) throws IOException {
        return "Fingerprint of the signing key (SHA-256):\n  " + open.fingerprint()
                + "\nGive it to clients apart from the archives: it stands on the brief.\n"
                + (file.isLocked() ? "It is kept under a passphrase" : "It is kept without a passphrase")
                + " in " + file.path()
                + ".\nKeep a copy of this file in a safe place: nobody can make the same key again.\n" + open.pem();
    }
}
