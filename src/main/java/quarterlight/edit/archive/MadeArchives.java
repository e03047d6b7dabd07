package quarterlight.edit.archive;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import quarterlight.file.DurableFiles;
import quarterlight.units.Days;

/**
 * The archives made of a visit, with their hashes: a small table in its folder, so that pages that are made later can print the hash. An aid to memory, no evidence: it
 * goes into no archive, and where it cannot be written the archive is made all the same.
 */
public final class MadeArchives {
    /** Its name in the folder of a visit. */
    public static final String FILE = "archives.csv";

    private static final System.Logger LOG = System.getLogger(MadeArchives.class.getName());
    private static final String HEADER = "made,file,contents,bytes,sha256,key\n";
    private static final int MAX_BYTES = 1 << 20;
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private MadeArchives() {}

    static void note(Path visit, OffsetDateTime made, String contents, Archived archived) {
        try {
            Path file = visit.resolve(FILE);
            boolean goesOn = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Files.size(file) < MAX_BYTES;
            String before = goesOn ? Files.readString(file) : HEADER;
            String name = String.valueOf(archived.file().getFileName());
            DurableFiles.text(
                    file,
                    before
                            + CSVFormat.RFC4180.format(
                                    made.truncatedTo(ChronoUnit.SECONDS),
                                    name,
                                    contents,
                                    archived.bytes(),
                                    archived.sha256(),
                                    archived.key().orElse(""))
                            + "\n");
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "the hash of the archive could not be noted in " + visit, e);
        }
    }

    /** The last one made for the buyer, else the last one, in a few words with its hash; empty if none is known. */
    public static Optional<String> last(Path visit) {
        Path file = visit.resolve(FILE);
        Optional<String> found = Optional.empty();
        boolean buyers = false;
        try {
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > 2 * MAX_BYTES) {
                return Optional.empty();
            }
            List<CSVRecord> rows =
                    CSVFormat.RFC4180.parse(Files.newBufferedReader(file)).getRecords();
            for (CSVRecord row : rows.subList(Math.min(1, rows.size()), rows.size())) {
                boolean forBuyer = Archiving.FOR_BUYER.equals(row.get(2));
                if ((forBuyer || !buyers) && row.get(4).matches("[0-9a-f]{64}")) {
                    buyers |= forBuyer;
                    found = Optional.of(say(
                            forBuyer ? "archived.made.for-buyer" : "archived.made.whole",
                            said(OffsetDateTime.parse(row.get(0))),
                            row.get(4)));
                }
            }
        } catch (IOException | RuntimeException e) {
            LOG.log(System.Logger.Level.WARNING, file + " cannot be read", e);
        }
        return found;
    }

    private static String said(OffsetDateTime time) {
        return Days.day(time.toLocalDate()) + ", " + HOUR.format(time);
    }
}
