package quarterlight.archive.signature;

import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.Signature;
import java.util.Objects;

/**
 * The key by which an inspector signs archives.
 * <p>Source: RFC 8032 (EdDSA), Ed25519, as the Java platform has it.
 */
public final class SigningKey {
    private static final byte[] PROBE = {1, 2, 3};

    private final PrivateKey secret;
    private final PublicHalf open;

    SigningKey(PrivateKey secret, PublicHalf open) {
        this.secret = Objects.requireNonNull(secret, "secret");
        this.open = Objects.requireNonNull(open, "open");
    }

    /** A new one that nobody else has. */
    public static SigningKey fresh() {
        try {
            KeyPair pair = KeyPairGenerator.getInstance(PublicHalf.ALGORITHM).generateKeyPair();
            return new SigningKey(pair.getPrivate(), PublicHalf.of(pair.getPublic()));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Java has Ed25519 since 15", e);
        }
    }

    public PublicHalf open() {
        return open;
    }

    /** Whether the two halves belong together. */
    boolean isWhole() {
        return open.holds(PROBE, sign(PROBE));
    }

    byte[] secretEncoded() {
        return secret.getEncoded();
    }

    /** 64 bytes. */
    public byte[] sign(byte[] bytes) {
        try {
            Signature signature = Signature.getInstance(PublicHalf.ALGORITHM);
            signature.initSign(secret);
            signature.update(bytes);
            return signature.sign();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("a key of Ed25519 signs any bytes", e);
        }
    }
}
