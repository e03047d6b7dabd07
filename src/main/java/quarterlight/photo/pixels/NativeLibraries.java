package quarterlight.photo.pixels;

import java.nio.file.Path;
import java.util.List;
import org.bytedeco.javacpp.Loader;
import org.bytedeco.javacpp.Pointer;
import org.bytedeco.javacpp.PointerPointer;
import org.bytedeco.leptonica.global.leptonica;

/** Loads the native parts of libraries, once each; where a part is missing or does not fit this computer, the program goes on without it. */
public final class NativeLibraries {
    private static final System.Logger LOG = System.getLogger(NativeLibraries.class.getName());

    /** The variable that holds the stream: of GNU and other Linux libraries, of macOS. */
    private static final List<String> STANDARD_ERROR = List.of("stderr", "__stderrp");

    static {
        setUnlessSet(
                "org.bytedeco.javacpp.cachedir",
                Path.of(System.getProperty("user.home"), ".quarterlight", "libraries")
                        .toString());
        // memory outside the heap is released at once by those who ask for it, and counted by the bounds on pictures
        setUnlessSet("org.bytedeco.javacpp.nopointergc", "true");
        setUnlessSet("org.bytedeco.javacpp.maxPhysicalBytes", "0");
        setUnlessSet("org.bytedeco.javacpp.maxBytes", "0");
    }

    private NativeLibraries() {}

    private static void setUnlessSet(String key, String value) {
        if (System.getProperty(key) == null) {
            System.setProperty(key, value);
        }
    }

    /** Whether the library whose functions a class holds can be used. */
    public static boolean loads(String classOfFunctions) {
        try {
            Loader.load(Class.forName(classOfFunctions));
            return true;
        } catch (ClassNotFoundException | LinkageError e) {
            LOG.log(System.Logger.Level.INFO, "without the native part of " + classOfFunctions + ": " + e.getMessage());
            return false;
        }
    }

    /**
     * Sends what C libraries write to their standard error nowhere: the JPEG library remarks there on each damaged file, in words of its own.
     * The Java platform's standard error is another stream and stays. On Windows, and where the stream is not found, nothing is changed.
     */
    public static void silence() {
        for (String name : STANDARD_ERROR) {
            try {
                Pointer variable = Loader.addressof(name);
                if (variable != null && !variable.isNull()) {
                    Pointer nowhere = leptonica.fopenWriteStream("/dev/null", "w");
                    if (nowhere != null && !nowhere.isNull()) {
                        new PointerPointer<>(variable).put(0, nowhere);
                    }
                    return;
                }
            } catch (RuntimeException | LinkageError e) {
                LOG.log(System.Logger.Level.INFO, "native remarks cannot be silenced: " + e.getMessage());
            }
        }
    }
}
