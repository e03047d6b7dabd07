package quarterlight.archive.signature;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/**
 * The half of a signing key that everybody may have. Its fingerprint is the SHA-256 of its 44 bytes as X.509 writes a key of Ed25519 (RFC 8410), so that
 * {@code openssl pkey -pubin -outform DER | sha256sum} gives the same. Immutable.
 */
public final class PublicHalf {
    static final String ALGORITHM = "Ed25519";
    private static final String LABEL = "PUBLIC KEY";
    private static final int BYTES = 44;

    private final byte[] encoded;
    private final PublicKey key;

    private PublicHalf(byte[] encoded, PublicKey key) {
        this.encoded = encoded;
        this.key = key;
    }

    static PublicHalf of(PublicKey key) {
        return new PublicHalf(key.getEncoded(), key);
    }

    /** As a PEM file holds it; empty if that is no key of Ed25519. */
    public static Optional<PublicHalf> ofPem(String text) {
        return Pem.decoded(LABEL, text).filter(bytes -> bytes.length == BYTES).flatMap(bytes -> {
            try {
                return Optional.of(new PublicHalf(
                        bytes, KeyFactory.getInstance(ALGORITHM).generatePublic(new X509EncodedKeySpec(bytes))));
            } catch (GeneralSecurityException e) {
                return Optional.empty();
            }
        });
    }

    public String pem() {
        return Pem.encoded(LABEL, encoded);
    }

    /** Its SHA-256 in hexadecimal digits. */
    public String fingerprint() {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(encoded));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java platform has SHA-256", e);
        }
    }

    /** Whether the other half made this signature of these bytes. */
    boolean holds(byte[] signed, byte[] signature) {
        try {
            Signature check = Signature.getInstance(ALGORITHM);
            check.initVerify(key);
            check.update(signed);
            return check.verify(signature);
        } catch (GeneralSecurityException e) {
            return false;
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PublicHalf half && Arrays.equals(half.encoded, encoded);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(encoded);
    }
}
