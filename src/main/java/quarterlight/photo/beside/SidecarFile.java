package quarterlight.photo.beside;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import quarterlight.photo.MediaType;
import quarterlight.photo.header.FileFacts;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.SidecarWords;

/**
 * What a sidecar in XMP says of its photo: caption, keywords, rating and rotation. Read as a stream, without entities and document types.
 * <p>Source: ISO 16684-1 (XMP: data model, serialization, Dublin Core and XMP basic), CIPA DC-010 (tiff:Orientation in XMP).
 */
public final class SidecarFile {
    private static final int MAX_BYTES = 4 << 20;
    private static final int MAX_KEYWORDS = 200;
    private static final int MAX_LETTERS = 4000;
    private static final String DUBLIN_CORE = "http://purl.org/dc/elements/1.1/";
    private static final String BASIC = "http://ns.adobe.com/xap/1.0/";
    private static final String TIFF = "http://ns.adobe.com/tiff/1.0/";
    private static final String RDF = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";

    private Optional<String> caption = Optional.empty();
    private final List<String> keywords = new ArrayList<>();
    private OptionalInt rating = OptionalInt.empty();
    private OptionalInt orientation = OptionalInt.empty();

    private SidecarFile() {}

    /** Damage is a note; what came before it stands. */
    public static FileFacts facts(Path file) throws IOException {
        List<String> notes = new ArrayList<>();
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MAX_BYTES + 1);
        }
        SidecarFile read = new SidecarFile();
        if (bytes.length > MAX_BYTES) {
            notes.add("The sidecar is longer than " + (MAX_BYTES >> 20) + " MB; it is kept, but not read.");
        } else {
            try {
                read.read(bytes);
            } catch (XMLStreamException | RuntimeException e) {
                notes.add("The sidecar is damaged; it is kept, and what could be read of it is shown.");
            }
        }
        SidecarWords said = new SidecarWords(read.caption, read.keywords, read.rating, read.orientation);
        return FileFacts.of(MediaType.XMP, said.isEmpty() ? MediaFacts.NONE : MediaFacts.ofWords(said), notes);
    }

    private static XMLStreamReader reader(byte[] bytes) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> InputStream.nullInputStream());
        return factory.createXMLStreamReader(new ByteArrayInputStream(bytes));
    }

    private void read(byte[] bytes) throws XMLStreamException {
        XMLStreamReader in = reader(bytes);
        Deque<String> within = new ArrayDeque<>();
        StringBuilder text = new StringBuilder();
        while (in.hasNext()) {
            switch (in.next()) {
                case XMLStreamConstants.START_ELEMENT -> {
                    within.push(key(in.getNamespaceURI(), in.getLocalName()));
                    text.setLength(0);
                    for (int i = 0; i < in.getAttributeCount(); i++) {
                        take(key(in.getAttributeNamespace(i), in.getAttributeLocalName(i)), in.getAttributeValue(i));
                    }
                }
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text.append(in.getText());
                case XMLStreamConstants.END_ELEMENT -> {
                    take(meant(within), text.toString());
                    text.setLength(0);
                    within.pop();
                }
                default -> {}
            }
        }
    }

    private static String key(String namespace, String name) {
        return (namespace == null ? "" : namespace) + name;
    }

    /** An item of a list is meant as the property that holds the list. */
    private static String meant(Deque<String> within) {
        return within.stream().filter(name -> !name.startsWith(RDF)).findFirst().orElse("");
    }

    private void take(String property, String value) {
        String text = value.strip();
        if (text.isEmpty()) {
            return;
        }
        switch (property) {
            case DUBLIN_CORE + "description" -> caption = caption.isPresent() ? caption : Optional.of(cut(text));
            case DUBLIN_CORE + "subject" -> {
                String keyword = cut(text.replace('\n', ' '));
                if (keywords.size() < MAX_KEYWORDS && !keywords.contains(keyword)) {
                    keywords.add(keyword);
                }
            }
            case BASIC + "Rating" -> rating = number(text, SidecarWords.MIN_RATING, SidecarWords.MAX_RATING);
            case TIFF + "Orientation" -> orientation = number(text, 1, 8);
            default -> {}
        }
    }

    private static String cut(String text) {
        return text.length() <= MAX_LETTERS ? text : text.substring(0, MAX_LETTERS);
    }

    private static OptionalInt number(String text, int least, int greatest) {
        return text.matches("-?\\d(\\.0+)?")
                        && Double.parseDouble(text) >= least
                        && Double.parseDouble(text) <= greatest
                ? OptionalInt.of((int) Double.parseDouble(text))
                : OptionalInt.empty();
    }
}
