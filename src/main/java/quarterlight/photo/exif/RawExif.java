package quarterlight.photo.exif;

import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.Tag;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.GpsDirectory;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import quarterlight.photo.bytes.ByteView;

/** The Exif data of cameras' own formats, put together as it stands in a JPEG. */
public final class RawExif {
    private RawExif() {}

    /** A CR3 keeps each of Exif's directories in a block of its own, each as the first directory of a TIFF structure. */
    public static void ofCr3(ByteView file, Metadata metadata, List<String> notes) throws IOException {
        Optional<byte[]> main = EmbeddedPicture.exifOfCr3(file, "CMT1");
        main.ifPresent(block -> ofBlocks(List.of(block), metadata, notes));
        moved(EmbeddedPicture.exifOfCr3(file, "CMT2"), new ExifSubIFDDirectory(), metadata, notes);
        moved(EmbeddedPicture.exifOfCr3(file, "CMT4"), new GpsDirectory(), metadata, notes);
    }

    public static void ofBlocks(List<byte[]> blocks, Metadata metadata, List<String> notes) {
        for (byte[] block : blocks) {
            try {
                new ExifReader().extract(new ByteArrayReader(block), metadata);
            } catch (RuntimeException | StackOverflowError e) {
                notes.add("Part of the Exif data is damaged and was not read.");
            }
        }
    }

    private static void moved(Optional<byte[]> block, Directory to, Metadata metadata, List<String> notes) {
        if (block.isEmpty()) {
            return;
        }
        Metadata alone = new Metadata();
        ofBlocks(List.of(block.get()), alone, notes);
        for (ExifIFD0Directory from : alone.getDirectoriesOfType(ExifIFD0Directory.class)) {
            for (Tag tag : from.getTags()) {
                to.setObject(tag.getTagType(), from.getObject(tag.getTagType()));
            }
        }
        metadata.addDirectory(to);
    }
}
