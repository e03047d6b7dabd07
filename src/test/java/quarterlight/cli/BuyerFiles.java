package quarterlight.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import quarterlight.archive.RfcBag;

/** Opens what was made for a buyer to its last stream: all text that it holds in whatever form, and every picture as its own file. */
public final class BuyerFiles {
    private static final Pattern EMBEDDED = Pattern.compile("data:image/(?:jpeg|png);base64,([A-Za-z0-9+/=\\s]+)");

    /** All that was found as text, by file and place in it. */
    public final Map<String, String> texts = new LinkedHashMap<>();

    /** Pictures as they are embedded, by file and number. */
    final Map<String, byte[]> pictures = new LinkedHashMap<>();

    /** The pages of a visit and its archive for the buyer, made under this name, all opened. */
    public static BuyerFiles made(Bench bench, String visit, String name) throws Exception {
        BuyerFiles files = new BuyerFiles();
        bench.run("pages", visit, "--out", bench.folder(name)).done();
        try (Stream<Path> all = Files.walk(Path.of(bench.folder(name)))) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.add(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        bench.run("archive", visit, bench.folder(name + ".zip"), "--for-buyer").done();
        for (Map.Entry<String, byte[]> file :
                RfcBag.of(Path.of(bench.folder(name + ".zip"))).files().entrySet()) {
            files.add("bag/" + file.getKey(), file.getValue());
        }
        return files;
    }

    public void add(String name, byte[] bytes) throws IOException {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        texts.put(name, text + new String(bytes, StandardCharsets.UTF_16BE));
        if (name.endsWith(".jpg") || name.endsWith(".png")) {
            pictures.put(name, bytes);
        }
        Matcher embedded = EMBEDDED.matcher(text);
        for (int i = 1; embedded.find(); i++) {
            byte[] picture = Base64.getMimeDecoder().decode(embedded.group(1));
            pictures.put(name + " picture " + i, picture);
            texts.put(name + " picture " + i, new String(picture, StandardCharsets.ISO_8859_1));
        }
        if (text.startsWith("%PDF")) {
            try (PDDocument document = Loader.loadPDF(bytes)) {
                texts.put(name + " text", new PDFTextStripper().getText(document));
                new Walk(name).into(document.getDocument().getTrailer());
            }
        }
    }

    /** Goes through every object of a PDF file once. */
    private final class Walk {
        private final String name;
        private final Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        private final List<COSBase> waiting = new ArrayList<>();

        Walk(String name) {
            this.name = name;
        }

        void into(COSBase root) throws IOException {
            waiting.add(root);
            while (!waiting.isEmpty()) {
                COSBase next = waiting.remove(waiting.size() - 1);
                COSBase base = next instanceof COSObject reference ? reference.getObject() : next;
                if (base != null && seen.add(base)) {
                    look(base);
                }
            }
        }

        private void look(COSBase base) throws IOException {
            String place = name + " object " + seen.size();
            if (base instanceof COSString string) {
                texts.put(place, string.getString());
            } else if (base instanceof COSArray array) {
                array.forEach(waiting::add);
            } else if (base instanceof COSDictionary dictionary) {
                waiting.addAll(dictionary.getValues());
                if (base instanceof COSStream stream) {
                    stream(place, stream);
                }
            }
        }

        private void stream(String place, COSStream stream) throws IOException {
            if (COSName.IMAGE.equals(stream.getCOSName(COSName.SUBTYPE))) {
                byte[] raw;
                try (InputStream in = stream.createRawInputStream()) {
                    raw = in.readAllBytes();
                }
                texts.put(place + " as embedded", new String(raw, StandardCharsets.ISO_8859_1));
                if (raw.length > 2 && (raw[0] & 0xFF) == 0xFF && (raw[1] & 0xFF) == 0xD8) {
                    pictures.put(place, raw);
                }
            }
            try (InputStream in = stream.createInputStream()) {
                texts.put(place + " unpacked", new String(in.readAllBytes(), StandardCharsets.ISO_8859_1));
            }
        }
    }

    /** A picture as it shows itself. */
    static java.awt.image.BufferedImage shown(byte[] picture) throws IOException {
        return javax.imageio.ImageIO.read(new ByteArrayInputStream(picture));
    }
}
