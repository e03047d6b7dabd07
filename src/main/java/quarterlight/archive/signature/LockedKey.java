package quarterlight.archive.signature;

import java.io.IOException;
import java.security.AlgorithmParameters;
import java.security.GeneralSecurityException;
import java.security.InvalidKeyException;
import java.security.SecureRandom;
import javax.crypto.Cipher;
import javax.crypto.EncryptedPrivateKeyInfo;
import javax.crypto.SecretKey;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.IvParameterSpec;
import javax.crypto.spec.PBEKeySpec;
import javax.crypto.spec.PBEParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * A secret key under a passphrase in UTF-8, in the form that other programs open too.
 * <p>Source: RFC 5958 (encrypted private keys), RFC 8018 (PBES2 with PBKDF2), HMAC with SHA-256 and AES of 256 bits in CBC; 600,000 rounds as the OWASP "Password
 * Storage Cheat Sheet" has it for PBKDF2 with SHA-256 (from memory). The platform's own cipher of that name takes passphrases in ASCII alone, so the two steps of
 * the scheme are called one by one.
 */
final class LockedKey {
    private static final String PARAMETERS = "PBEWithHmacSHA256AndAES_256";
    /** The name under which the platform knows the number of the scheme. */
    private static final String SCHEME = "PBES2";

    private static final String DERIVATION = "PBKDF2WithHmacSHA256";
    private static final String CIPHER = "AES/CBC/PKCS5Padding";
    private static final int ROUNDS = 600_000;
    /** A file that asks for more is no file of ours, and would keep the program busy for minutes. */
    private static final int MAX_ROUNDS = 20_000_000;

    private static final int KEY_BITS = 256;
    private static final int BLOCK = 16;

    private LockedKey() {}

    static byte[] locked(byte[] secret, char[] passphrase) {
        try {
            PBEParameterSpec spec = new PBEParameterSpec(random(), ROUNDS, new IvParameterSpec(random()));
            AlgorithmParameters parameters = AlgorithmParameters.getInstance(PARAMETERS);
            parameters.init(spec);
            AlgorithmParameters named = AlgorithmParameters.getInstance(SCHEME);
            named.init(parameters.getEncoded());
            byte[] hidden = cipher(Cipher.ENCRYPT_MODE, passphrase, spec).doFinal(secret);
            return new EncryptedPrivateKeyInfo(named, hidden).getEncoded();
        } catch (GeneralSecurityException | IOException e) {
            throw new IllegalStateException("Java has PBES2 with AES", e);
        }
    }

    /** @throws GeneralSecurityException if the passphrase is another, or the bytes are damaged or of another scheme */
    static byte[] unlocked(byte[] locked, char[] passphrase) throws GeneralSecurityException, IOException {
        EncryptedPrivateKeyInfo info = new EncryptedPrivateKeyInfo(locked);
        AlgorithmParameters parameters = info.getAlgParameters();
        if (parameters == null || !PARAMETERS.equals(parameters.toString())) {
            throw new InvalidKeyException("a key under another scheme");
        }
        PBEParameterSpec spec = parameters.getParameterSpec(PBEParameterSpec.class);
        if (spec.getIterationCount() > MAX_ROUNDS) {
            throw new InvalidKeyException("too many rounds");
        }
        return cipher(Cipher.DECRYPT_MODE, passphrase, spec).doFinal(info.getEncryptedData());
    }

    private static Cipher cipher(int mode, char[] passphrase, PBEParameterSpec spec) throws GeneralSecurityException {
        PBEKeySpec words = new PBEKeySpec(passphrase, spec.getSalt(), spec.getIterationCount(), KEY_BITS);
        SecretKey derived;
        try {
            derived = SecretKeyFactory.getInstance(DERIVATION).generateSecret(words);
        } finally {
            words.clearPassword();
        }
        Cipher cipher = Cipher.getInstance(CIPHER);
        cipher.init(mode, new SecretKeySpec(derived.getEncoded(), "AES"), spec.getParameterSpec());
        return cipher;
    }

    private static byte[] random() {
        byte[] bytes = new byte[BLOCK];
        new SecureRandom().nextBytes(bytes);
        return bytes;
    }
}
