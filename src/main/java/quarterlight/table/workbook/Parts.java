package quarterlight.table.workbook;

import static quarterlight.language.Sentences.say;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The parts of a workbook, each read as a stream of XML that ends with a refusal where more comes out than a table can be. */
final class Parts implements AutoCloseable {
    /** Bytes that one part may unpack to. */
    static final long MAX_UNPACKED = 64L << 20;

    private final ZipFile zip;

    Parts(Path file) throws IOException {
        zip = new ZipFile(file.toFile());
    }

    /** What is done with a part. */
    interface Reading<T> {
        T read(XMLStreamReader xml) throws XMLStreamException, WorkbookRefused;
    }

    boolean has(String name) {
        return zip.getEntry(name) != null;
    }

    /** Reads a part; empty if the workbook lacks it. */
    <T> Optional<T> read(String name, Reading<T> reading) throws IOException, WorkbookRefused {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            return Optional.empty();
        }
        try (Bounded in = new Bounded(zip.getInputStream(entry))) {
            XMLStreamReader xml = factory().createXMLStreamReader(in);
            try {
                return Optional.of(reading.read(xml));
            } finally {
                xml.close();
            }
        } catch (TooMuch e) {
            throw tooMuch();
        } catch (XMLStreamException e) {
            if (e.getNestedException() instanceof TooMuch) {
                throw tooMuch();
            }
            if (e.getNestedException() instanceof IOException broken) {
                throw broken;
            }
            throw new WorkbookRefused(say("workbook.part", name));
        }
    }

    private static WorkbookRefused tooMuch() {
        return new WorkbookRefused(say("workbook.unpacks", (MAX_UNPACKED >> 20)));
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
        return factory;
    }

    private static final class TooMuch extends IOException {
        private static final long serialVersionUID = 1L;
    }

    /** Stops at the limit, whatever the archive says of its sizes. */
    private static final class Bounded extends FilterInputStream {
        private long left = MAX_UNPACKED;

        Bounded(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int b = super.read();
            count(b < 0 ? 0 : 1);
            return b;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            int n = super.read(into, from, length);
            count(Math.max(0, n));
            return n;
        }

        private void count(int n) throws TooMuch {
            left -= n;
            if (left < 0) {
                throw new TooMuch();
            }
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
