/**
 * Answers: who signed an archive, and does the signature hold?
 * <p>Ed25519 (RFC 8032) by the Java platform; keys as PKCS#8 and X.509 in PEM, so that other programs can check a signature without this one. Read
 * {@link quarterlight.archive.signature.SigningKey} first, then {@link quarterlight.archive.signature.SignatureCheck}.
 *
 * <p>Decided in docs/decisions: 0216, 0217.
 */
package quarterlight.archive.signature;
