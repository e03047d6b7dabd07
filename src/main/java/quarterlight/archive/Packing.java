package quarterlight.archive;

import java.util.zip.Deflater;

/** Whether a file is made smaller in the archive: photos and films cannot be, and are only carried. */
public enum Packing {
    CARRIED(Deflater.NO_COMPRESSION),
    SMALLER(Deflater.DEFAULT_COMPRESSION);

    private final int level;

    Packing(int level) {
        this.level = level;
    }

    int level() {
        return level;
    }
}
