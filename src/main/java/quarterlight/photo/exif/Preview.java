package quarterlight.photo.exif;

/** The small JPEG picture that a camera put into a file's metadata; immutable. */
public final class Preview {
    private final byte[] jpeg;

    public Preview(byte[] jpeg) {
        this.jpeg = jpeg.clone();
    }

    public byte[] jpeg() {
        return jpeg.clone();
    }
}
