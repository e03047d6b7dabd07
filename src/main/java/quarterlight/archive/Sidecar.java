package quarterlight.archive;

import java.io.StringWriter;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import quarterlight.units.XmlText;
import quarterlight.visit.photo.Position;

/**
 * What other programs may know of one photo, as an XMP packet in a file of its own beside the photo.
 * <p>Source: ISO 16684-1 (XMP data model and serialization): {@code dc:subject}, {@code dc:description} and {@code xmp:CreateDate};
 * the exif schema of "XMP Specification Part 2" for {@code exif:DateTimeOriginal} and the place; {@code xmp:Rating} as there; hierarchical keywords and regions by {@link SidecarRegion}.
 *
 * @param subjects zones and what is shown, in words
 * @param description the caption
 * @param taken when it was taken, after the clock was set right
 * @param place left out unless the user asks for places
 * @param paths what {@link #subjects} say as a hierarchy: group of zones, zone
 * @param regions what is marked on the photo
 * @param size of the upright photo, to which the regions apply; absent if it is not known, and then no region is told
 * @param rejected whether the photo was put aside
 */
public record Sidecar(
        List<String> subjects,
        Optional<String> description,
        Optional<OffsetDateTime> taken,
        Optional<Position> place,
        List<List<String>> paths,
        List<SidecarRegion> regions,
        Optional<Size> size,
        boolean rejected) {
    /** Without a hierarchy, regions and rating. */
    Sidecar(
            List<String> subjects,
            Optional<String> description,
            Optional<OffsetDateTime> taken,
            Optional<Position> place) {
        this(subjects, description, taken, place, List.of(), List.of(), Optional.empty(), false);
    }

    /** Width and height, pixels. */
    public record Size(int width, int height) {}

    /** The XMP specification, part 1, 8.4: -1 for a rejected file. */
    private static final String REJECTED = "-1";

    private static final String META = "adobe:ns:meta/";
    static final String RDF = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
    private static final String DC = "http://purl.org/dc/elements/1.1/";
    private static final String XMP = "http://ns.adobe.com/xap/1.0/";
    private static final String EXIF = "http://ns.adobe.com/exif/1.0/";
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSxxx");

    public Sidecar {
        subjects = List.copyOf(subjects);
        paths = paths.stream().map(List::copyOf).toList();
        regions = List.copyOf(regions);
        Objects.requireNonNull(size, "size");
        Objects.requireNonNull(description, "description");
        Objects.requireNonNull(taken, "taken");
        Objects.requireNonNull(place, "place");
    }

    /** The document. Text stands as typed; characters that no XML may hold stand as their number. */
    public String xml() {
        StringWriter out = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeCharacters("\n");
            xml.setPrefix("x", META);
            xml.writeStartElement("x", "xmpmeta", META);
            xml.writeNamespace("x", META);
            xml.writeStartElement("rdf", "RDF", RDF);
            xml.writeNamespace("rdf", RDF);
            xml.writeStartElement("rdf", "Description", RDF);
            xml.writeNamespace("dc", DC);
            xml.writeNamespace("xmp", XMP);
            xml.writeNamespace("exif", EXIF);
            SidecarRegion.namespaces(xml);
            xml.writeAttribute("rdf", RDF, "about", "");
            properties(xml);
            xml.writeEndElement();
            xml.writeEndElement();
            xml.writeEndElement();
            xml.writeCharacters("\n");
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("a text in memory can be written", e);
        }
        return out.toString();
    }

    private void properties(XMLStreamWriter xml) throws XMLStreamException {
        if (!subjects.isEmpty()) {
            xml.writeStartElement("dc", "subject", DC);
            xml.writeStartElement("rdf", "Bag", RDF);
            for (String subject : subjects) {
                element(xml, "rdf", RDF, "li", subject);
            }
            xml.writeEndElement();
            xml.writeEndElement();
        }
        if (description.isPresent()) {
            xml.writeStartElement("dc", "description", DC);
            xml.writeStartElement("rdf", "Alt", RDF);
            xml.writeStartElement("rdf", "li", RDF);
            xml.writeAttribute("xml", "http://www.w3.org/XML/1998/namespace", "lang", "x-default");
            xml.writeCharacters(clean(description.get()));
            xml.writeEndElement();
            xml.writeEndElement();
            xml.writeEndElement();
        }
        SidecarRegion.keywords(xml, paths);
        if (size.isPresent() && !regions.isEmpty()) {
            SidecarRegion.write(xml, regions, size.get());
        }
        if (rejected) {
            element(xml, "xmp", XMP, "Rating", REJECTED);
        }
        if (taken.isPresent()) {
            element(xml, "xmp", XMP, "CreateDate", TIME.format(taken.get()));
            element(xml, "exif", EXIF, "DateTimeOriginal", TIME.format(taken.get()));
        }
        if (place.isPresent()) {
            element(xml, "exif", EXIF, "GPSLatitude", degrees(place.get().latitude(), 'N', 'S'));
            element(xml, "exif", EXIF, "GPSLongitude", degrees(place.get().longitude(), 'E', 'W'));
        }
    }

    static void element(XMLStreamWriter xml, String prefix, String namespace, String name, String text)
            throws XMLStreamException {
        xml.writeStartElement(prefix, name, namespace);
        xml.writeCharacters(clean(text));
        xml.writeEndElement();
    }

    /** XML readers turn every line end into a line feed, so it is written as one. */
    private static String clean(String typed) {
        return XmlText.clean(typed.replace("\r\n", "\n").replace('\r', '\n'));
    }

    /** Degrees and minutes as the exif schema writes them: {@code 39,44.349216N}. */
    private static String degrees(double value, char positive, char negative) {
        double size = Math.abs(value);
        int whole = (int) size;
        String minutes = String.format(Locale.ROOT, "%.6f", (size - whole) * 60);
        if (minutes.equals("60.000000")) {
            whole++;
            minutes = "0.000000";
        }
        return whole + "," + minutes + (value < 0 ? negative : positive);
    }
}
