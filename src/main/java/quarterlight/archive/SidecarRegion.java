package quarterlight.archive;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * A rectangle marked on a photo, for its sidecar, and the hierarchy of its keywords.
 * <p>Source: Metadata Working Group, "Guidelines for Handling Image Metadata", version 2.0, 2010, chapters on image regions and hierarchical keywords; from
 * memory. The type of a region is left out: the guidelines list faces, pets, focus and bar codes only.
 *
 * @param x middle, share of the width of the upright photo
 * @param y middle, share of its height
 * @param width share of the width
 * @param height share of the height
 * @param name zone and kind
 * @param description as typed
 */
public record SidecarRegion(
        double x, double y, double width, double height, String name, Optional<String> description) {
    private static final String REGIONS = "http://www.metadataworkinggroup.com/schemas/regions/";
    private static final String KEYWORDS = "http://www.metadataworkinggroup.com/schemas/keywords/";
    private static final String AREA = "http://ns.adobe.com/xmp/sType/Area#";
    private static final String DIMENSIONS = "http://ns.adobe.com/xap/1.0/sType/Dimensions#";
    private static final String RS = "mwg-rs";
    private static final String KW = "mwg-kw";

    public SidecarRegion {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(description, "description");
    }

    static void namespaces(XMLStreamWriter xml) throws XMLStreamException {
        xml.writeNamespace(RS, REGIONS);
        xml.writeNamespace(KW, KEYWORDS);
        xml.writeNamespace("stArea", AREA);
        xml.writeNamespace("stDim", DIMENSIONS);
    }

    static void write(XMLStreamWriter xml, List<SidecarRegion> regions, Sidecar.Size size) throws XMLStreamException {
        resource(xml, RS, REGIONS, "Regions");
        resource(xml, RS, REGIONS, "AppliedToDimensions");
        Sidecar.element(xml, "stDim", DIMENSIONS, "w", Integer.toString(size.width()));
        Sidecar.element(xml, "stDim", DIMENSIONS, "h", Integer.toString(size.height()));
        Sidecar.element(xml, "stDim", DIMENSIONS, "unit", "pixel");
        xml.writeEndElement();
        bag(xml, RS, REGIONS, "RegionList");
        for (SidecarRegion region : regions) {
            resource(xml, "rdf", Sidecar.RDF, "li");
            resource(xml, RS, REGIONS, "Area");
            Sidecar.element(xml, "stArea", AREA, "x", share(region.x()));
            Sidecar.element(xml, "stArea", AREA, "y", share(region.y()));
            Sidecar.element(xml, "stArea", AREA, "w", share(region.width()));
            Sidecar.element(xml, "stArea", AREA, "h", share(region.height()));
            Sidecar.element(xml, "stArea", AREA, "unit", "normalized");
            xml.writeEndElement();
            Sidecar.element(xml, RS, REGIONS, "Name", region.name());
            if (region.description().isPresent()) {
                Sidecar.element(
                        xml, RS, REGIONS, "Description", region.description().get());
            }
            xml.writeEndElement();
        }
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeEndElement();
    }

    /** @param paths of keywords, the widest first */
    static void keywords(XMLStreamWriter xml, List<List<String>> paths) throws XMLStreamException {
        if (paths.isEmpty()) {
            return;
        }
        resource(xml, KW, KEYWORDS, "Keywords");
        hierarchy(xml, "Hierarchy", paths);
        xml.writeEndElement();
    }

    private static void hierarchy(XMLStreamWriter xml, String name, List<List<String>> paths)
            throws XMLStreamException {
        Map<String, List<List<String>>> below = new LinkedHashMap<>();
        for (List<String> path : paths) {
            List<List<String>> children = below.computeIfAbsent(path.get(0), key -> new java.util.ArrayList<>());
            if (path.size() > 1) {
                children.add(path.subList(1, path.size()));
            }
        }
        bag(xml, KW, KEYWORDS, name);
        for (Map.Entry<String, List<List<String>>> keyword : below.entrySet()) {
            resource(xml, "rdf", Sidecar.RDF, "li");
            Sidecar.element(xml, KW, KEYWORDS, "Keyword", keyword.getKey());
            if (!keyword.getValue().isEmpty()) {
                hierarchy(xml, "Children", keyword.getValue());
            }
            xml.writeEndElement();
        }
        xml.writeEndElement();
        xml.writeEndElement();
    }

    private static void resource(XMLStreamWriter xml, String prefix, String namespace, String name)
            throws XMLStreamException {
        xml.writeStartElement(prefix, name, namespace);
        xml.writeAttribute("rdf", Sidecar.RDF, "parseType", "Resource");
    }

    private static void bag(XMLStreamWriter xml, String prefix, String namespace, String name)
            throws XMLStreamException {
        xml.writeStartElement(prefix, name, namespace);
        xml.writeStartElement("rdf", "Bag", Sidecar.RDF);
    }

    private static String share(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
    }
}
