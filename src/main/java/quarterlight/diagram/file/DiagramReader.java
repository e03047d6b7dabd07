package quarterlight.diagram.file;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.EnginePlace;
import quarterlight.diagram.DiagramShape;
import quarterlight.diagram.ShapeKind;
import quarterlight.diagram.ShapeOutline;
import quarterlight.diagram.StyleSize;
import quarterlight.diagram.ViewDrawing;
import quarterlight.units.Worded;

/** Reads one diagram file; nothing in it is run and nothing outside it is opened. One reader reads one file. */
final class DiagramReader {
    private static final String STYLE = "style";
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final int MAX_ELEMENTS = 50_000;
    private static final int MAX_DEPTH = 40;
    private static final double MAX_VIEW_MM = 30_000;

    private final String name;
    private final Deque<Scope> scopes = new ArrayDeque<>();
    private final Map<View, OpenView> views = new EnumMap<>(View.class);
    private Optional<Head> head = Optional.empty();
    private int elements;

    private record Head(BodyStyle style, StyleSize size) {}

    private record Scope(
            String element,
            Optional<OpenView> view,
            AffineTransform transform,
            Set<Construction> constructions,
            Set<EnginePlace> engines,
            boolean driver) {}

    private static final class OpenView {
        final View view;
        final double widthMm;
        final double heightMm;
        final StringBuilder title = new StringBuilder();
        final List<DiagramShape> shapes = new ArrayList<>();

        OpenView(View view, double widthMm, double heightMm) {
            this.view = view;
            this.widthMm = widthMm;
            this.heightMm = heightMm;
        }

        ViewDrawing drawing() {
            String words = title.toString().strip();
            return new ViewDrawing(view, words.isEmpty() ? view.word() : words, widthMm, heightMm, shapes);
        }
    }

    private final StringBuilder style = new StringBuilder();
    private boolean inStyle;

    DiagramReader(String name) {
        this.name = name;
    }

    DiagramFile read(byte[] bytes) throws DiagramRefused {
        try {
            XMLStreamReader xml = factory().createXMLStreamReader(new StringReader(text(bytes)));
            while (xml.hasNext()) {
                step(xml, xml.next());
            }
            xml.close();
        } catch (XMLStreamException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNumber();
            throw new DiagramRefused(
                    name, line, "it is not well-formed SVG", "open it in a drawing program and save it again");
        }
        if (head.isEmpty()) {
            throw new DiagramRefused(name, 0, "it is not an SVG drawing", "choose an SVG file");
        }
        List<ViewDrawing> drawings =
                views.values().stream().map(OpenView::drawing).toList();
        return new DiagramFile(name, head.get().style(), head.get().size(), drawings);
    }

    private String text(byte[] bytes) throws DiagramRefused {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new DiagramRefused(name, 0, "it is not text in UTF-8", "save it as plain SVG in UTF-8");
        }
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("nothing outside the file is opened");
        });
        return factory;
    }

    private void step(XMLStreamReader xml, int event) throws DiagramRefused {
        switch (event) {
            case XMLStreamConstants.DTD -> refuse(xml, "a document type is not allowed", "remove the DOCTYPE line");
            case XMLStreamConstants.ENTITY_REFERENCE -> refuse(xml, "an entity is not allowed", "write the text out");
            case XMLStreamConstants.PROCESSING_INSTRUCTION -> {
                if (xml.getPITarget().startsWith("xml-stylesheet")) {
                    refuse(xml, "an outside style sheet is not allowed", "put the style into the file");
                }
            }
            case XMLStreamConstants.START_ELEMENT -> start(xml);
            case XMLStreamConstants.END_ELEMENT -> end(xml);
            case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text(xml);
            default -> {}
        }
    }

    private void start(XMLStreamReader xml) throws DiagramRefused {
        String element = xml.getLocalName();
        if (++elements > MAX_ELEMENTS || scopes.size() > MAX_DEPTH) {
            refuse(xml, "it has too many elements", "leave out what is not drawing");
        }
        refuseIf(xml, SafeSvg.faultOfElement(xml.getNamespaceURI(), element));
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            refuseIf(xml, SafeSvg.faultOfAttribute(xml.getAttributeLocalName(i), xml.getAttributeValue(i)));
        }
        if (inStyle) {
            refuse(xml, "an element within a style is not allowed", "remove it");
        }
        inStyle = element.equals(STYLE);
        if (scopes.isEmpty()) {
            startFile(xml, element);
            return;
        }
        Scope outer = scopes.element();
        boolean drawing = SVG.equals(xml.getNamespaceURI());
        boolean hidden = outer.element().equals("defs") || outer.element().equals("defs/");
        Scope inner = outer;
        if (drawing && !hidden && element.equals("g")) {
            inner = group(xml, outer);
        } else if (drawing && !hidden && element.equals("path") && outer.view().isPresent()) {
            outer.view().get().shapes.add(shape(xml, narrowed(xml, outer)));
        } else if (attribute(xml, "data-zone").isPresent()) {
            refuse(
                    xml,
                    "a zone is drawn as <" + element + "> or outside the views",
                    "draw each zone as a path in the group of its view");
        }
        String path = hidden || element.equals("defs") ? "defs/" : element;
        scopes.push(new Scope(
                path, inner.view(), inner.transform(), inner.constructions(), inner.engines(), inner.driver()));
    }

    private void startFile(XMLStreamReader xml, String element) throws DiagramRefused {
        if (!element.equals("svg") || !SVG.equals(xml.getNamespaceURI())) {
            refuse(xml, "it is not an SVG drawing", "choose an SVG file");
        }
        BodyStyle style = word(xml, BodyStyle.class, "data-style", required(xml, "data-style"));
        StyleSize size = new StyleSize(
                length(xml, "data-wheelbase-mm"),
                length(xml, "data-length-mm"),
                length(xml, "data-width-mm"),
                length(xml, "data-height-mm"));
        head = Optional.of(new Head(style, size));
        scopes.push(new Scope(
                element,
                Optional.empty(),
                new AffineTransform(),
                EnumSet.allOf(Construction.class),
                EnumSet.allOf(EnginePlace.class),
                false));
    }

    private Scope group(XMLStreamReader xml, Scope outer) throws DiagramRefused {
        Optional<String> view = attribute(xml, "data-view");
        if (view.isEmpty()) {
            return narrowed(xml, outer);
        }
        if (outer.view().isPresent()) {
            refuse(xml, "a view stands inside another", "put each view into a group of its own");
        }
        View which = word(xml, View.class, "data-view", view.get());
        OpenView opened = new OpenView(which, length(xml, "data-width-mm"), length(xml, "data-height-mm"));
        if (views.put(which, opened) != null) {
            refuse(xml, "the " + which.word() + " view stands twice", "keep one of them");
        }
        Scope inner = narrowed(xml, outer);
        return new Scope(
                "g",
                Optional.of(opened),
                new AffineTransform(),
                inner.constructions(),
                inner.engines(),
                inner.driver());
    }

    private Scope narrowed(XMLStreamReader xml, Scope outer) throws DiagramRefused {
        Set<Construction> constructions = EnumSet.noneOf(Construction.class);
        constructions.addAll(outer.constructions());
        constructions.retainAll(words(xml, Construction.class, "data-construction"));
        Set<EnginePlace> engines = EnumSet.noneOf(EnginePlace.class);
        engines.addAll(outer.engines());
        engines.retainAll(words(xml, EnginePlace.class, "data-engine"));
        AffineTransform transform = new AffineTransform(outer.transform());
        Optional<String> list = attribute(xml, "transform");
        if (list.isPresent() && outer.view().isPresent()) {
            Optional<AffineTransform> own = SvgPath.transform(list.get());
            if (own.isEmpty()) {
                refuse(xml, "its transform cannot be read", "apply the transform in a drawing program");
            }
            own.ifPresent(transform::concatenate);
        }
        return new Scope("g", outer.view(), transform, constructions, engines, outer.driver() || isDriver(xml));
    }

    private boolean isDriver(XMLStreamReader xml) throws DiagramRefused {
        Optional<String> side = attribute(xml, "data-side");
        if (side.isPresent() && !side.get().equals("driver")) {
            refuse(xml, "data-side is \"" + side.get() + "\"", "write driver or leave it out");
        }
        return side.isPresent();
    }

    private DiagramShape shape(XMLStreamReader xml, Scope scope) throws DiagramRefused {
        Optional<ShapeKind> kind = attribute(xml, "class").flatMap(word -> Worded.find(ShapeKind.class, word));
        Optional<String> zone = attribute(xml, "data-zone");
        if (kind.isEmpty() || zone.isPresent() != (kind.get() == ShapeKind.ZONE)) {
            refuse(
                    xml,
                    "a path is neither a zone (class zone with data-zone) nor one of " + Worded.words(ShapeKind.class),
                    "give it its class");
        }
        if (zone.isPresent() && !ZoneId.isWellFormed(zone.get())) {
            refuse(xml, "there cannot be a zone named \"" + zone.get() + "\"", "use an id of the zone table");
        }
        Optional<Path2D.Double> path = attribute(xml, "d").flatMap(SvgPath::parse);
        if (path.isEmpty()) {
            refuse(xml, "the path data cannot be read", "draw the path again");
        }
        Path2D.Double drawn = path.orElseThrow();
        drawn.transform(scope.transform());
        return new DiagramShape(
                kind.orElseThrow(),
                attribute(xml, "id").orElse(""),
                zone.map(ZoneId::new),
                drawn,
                ShapeOutline.of(drawn),
                scope.constructions(),
                scope.engines(),
                scope.driver(),
                xml.getLocation().getLineNumber());
    }

    /** A style is judged as a whole: its words may be spread over comments, CDATA sections and character references. */
    private void end(XMLStreamReader xml) throws DiagramRefused {
        scopes.pop();
        if (xml.getLocalName().equals(STYLE)) {
            refuseIf(xml, SafeSvg.faultOfStyle(style.toString()));
            style.setLength(0);
            inStyle = false;
        }
    }

    private void text(XMLStreamReader xml) throws DiagramRefused {
        if (scopes.isEmpty()) {
            return;
        }
        Scope scope = scopes.element();
        if (inStyle) {
            style.append(xml.getText());
        } else if (scope.element().equals("title") && scope.view().isPresent()) {
            OpenView view = scope.view().get();
            if (view.shapes.isEmpty() && view.title.length() < 80) {
                view.title.append(xml.getText());
            }
        }
    }

    private static Optional<String> attribute(XMLStreamReader xml, String attribute) {
        return Optional.ofNullable(xml.getAttributeValue(null, attribute));
    }

    private String required(XMLStreamReader xml, String attribute) throws DiagramRefused {
        Optional<String> value = attribute(xml, attribute);
        if (value.isEmpty()) {
            refuse(xml, "<" + xml.getLocalName() + "> lacks " + attribute, "add it");
        }
        return value.orElseThrow();
    }

    private double length(XMLStreamReader xml, String attribute) throws DiagramRefused {
        String text = required(xml, attribute);
        double mm = 0;
        if (text.matches("\\d{1,6}(\\.\\d{1,6})?")) {
            mm = Double.parseDouble(text);
        }
        if (!(mm > 0 && mm <= MAX_VIEW_MM)) {
            refuse(xml, attribute + " is \"" + text + "\"", "give millimeters between 0 and 30000");
        }
        return mm;
    }

    private <E extends Enum<E> & Worded> E word(XMLStreamReader xml, Class<E> type, String attribute, String word)
            throws DiagramRefused {
        Optional<E> found = Worded.find(type, word);
        if (found.isEmpty()) {
            refuse(xml, attribute + " is \"" + word + "\"", "use one of " + Worded.words(type));
        }
        return found.orElseThrow();
    }

    private <E extends Enum<E> & Worded> Set<E> words(XMLStreamReader xml, Class<E> type, String attribute)
            throws DiagramRefused {
        Optional<String> list = attribute(xml, attribute);
        if (list.isEmpty()) {
            return EnumSet.allOf(type);
        }
        Set<E> found = EnumSet.noneOf(type);
        for (String word : list.get().strip().split("\\s+")) {
            found.add(word(xml, type, attribute, word));
        }
        return found;
    }

    private void refuseIf(XMLStreamReader xml, Optional<String> fault) throws DiagramRefused {
        if (fault.isPresent()) {
            refuse(xml, fault.get(), "remove it");
        }
    }

    private void refuse(XMLStreamReader xml, String found, String advice) throws DiagramRefused {
        throw new DiagramRefused(name, xml.getLocation().getLineNumber(), found, advice);
    }
}
