package quarterlight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import com.adobe.internal.xmp.XMPMeta;
import com.adobe.internal.xmp.XMPMetaFactory;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import quarterlight.visit.photo.Position;

/** Sidecars as a reader of XMP that is not ours sees them. */
class SidecarTest {
    private static final String DC = "http://purl.org/dc/elements/1.1/";
    private static final String EXIF = "http://ns.adobe.com/exif/1.0/";

    private static XMPMeta read(Sidecar sidecar) throws Exception {
        byte[] bytes = sidecar.xml().getBytes(StandardCharsets.UTF_8);
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
        return XMPMetaFactory.parseFromBuffer(bytes);
    }

    @Test
    void zoneCaptionTimeAndPlaceAreWhereReadersLook() throws Exception {
        XMPMeta meta = read(new Sidecar(
                List.of("Left front door", "paint edge"),
                Optional.of("Tape line below the handle"),
                Optional.of(OffsetDateTime.parse("2026-04-18T09:42:00-07:00")),
                Optional.of(new Position(-39.7391536, 104.9999999999))));
        assertThat(meta.getArrayItem(DC, "subject", 1).getValue()).isEqualTo("Left front door");
        assertThat(meta.getArrayItem(DC, "subject", 2).getValue()).isEqualTo("paint edge");
        assertThat(meta.countArrayItems(DC, "subject")).isEqualTo(2);
        assertThat(meta.getLocalizedText(DC, "description", null, "x-default").getValue())
                .isEqualTo("Tape line below the handle");
        assertThat(meta.getPropertyDate(EXIF, "DateTimeOriginal").getISO8601String())
                .isEqualTo("2026-04-18T09:42-07:00");
        assertThat(meta.getPropertyString("http://ns.adobe.com/xap/1.0/", "CreateDate"))
                .isEqualTo("2026-04-18T09:42:00.000-07:00");
        assertThat(meta.getPropertyString(EXIF, "GPSLatitude")).isEqualTo("39,44.349216S");
        assertThat(meta.getPropertyString(EXIF, "GPSLongitude")).isEqualTo("105,0.000000E");
    }

    @Test
    void hierarchyRegionsAndRatingAreWhereReadersLook() throws Exception {
        String rs = "http://www.metadataworkinggroup.com/schemas/regions/";
        String kw = "http://www.metadataworkinggroup.com/schemas/keywords/";
        Sidecar sidecar = new Sidecar(
                List.of("Left front door"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(List.of("outer", "Left front door"), List.of("outer", "Hood"), List.of("bay", "Firewall")),
                List.of(
                        new SidecarRegion(0.5, 0.25, 0.1, 0.2, "Hood: scale", Optional.of("lip & seam")),
                        new SidecarRegion(0.1, 0.1, 0.2, 0.2, "arrow", Optional.empty())),
                Optional.of(new Sidecar.Size(4000, 3000)),
                true);
        XMPMeta meta = read(sidecar);
        assertThat(meta.getPropertyString("http://ns.adobe.com/xap/1.0/", "Rating"))
                .isEqualTo("-1");
        String list = "Regions/mwg-rs:RegionList";
        assertThat(meta.countArrayItems(rs, list)).isEqualTo(2);
        assertThat(meta.getPropertyString(rs, list + "[1]/mwg-rs:Name")).isEqualTo("Hood: scale");
        assertThat(meta.getPropertyString(rs, list + "[1]/mwg-rs:Description")).isEqualTo("lip & seam");
        assertThat(meta.getPropertyDouble(rs, list + "[1]/mwg-rs:Area/stArea:y"))
                .isEqualTo(0.25);
        assertThat(meta.getPropertyInteger(rs, "Regions/mwg-rs:AppliedToDimensions/stDim:h"))
                .isEqualTo(3000);
        String top = "Keywords/mwg-kw:Hierarchy";
        assertThat(meta.countArrayItems(kw, top)).isEqualTo(2);
        assertThat(meta.getPropertyString(kw, top + "[1]/mwg-kw:Children[2]/mwg-kw:Keyword"))
                .isEqualTo("Hood");
        XMPMeta plain = read(new Sidecar(List.of(), Optional.empty(), Optional.empty(), Optional.empty()));
        assertThat(plain.doesPropertyExist(rs, "Regions")).isFalse();
        assertThat(plain.doesPropertyExist("http://ns.adobe.com/xap/1.0/", "Rating"))
                .isFalse();
    }

    @Test
    void whatWasTypedStaysTextWhateverItHolds() throws Exception {
        String typed = "</rdf:li><x y='1'>&amp; \"größer\" 塗装 \ud83d\ude97 ]]> <!-- two\nlines";
        XMPMeta meta = read(new Sidecar(List.of(typed), Optional.of(typed), Optional.empty(), Optional.empty()));
        assertThat(meta.getArrayItem(DC, "subject", 1).getValue()).isEqualTo(typed);
        assertThat(meta.getLocalizedText(DC, "description", null, "x-default").getValue())
                .isEqualTo(typed);
        XMPMeta odd = read(new Sidecar(
                List.of("a\u0000b\u0008c\ud800d\uffffe"),
                Optional.of("one\r\ntwo\rthree"),
                Optional.empty(),
                Optional.empty()));
        assertThat(odd.getArrayItem(DC, "subject", 1).getValue()).isEqualTo("a[U+0000]b[U+0008]c[U+D800]d[U+FFFF]e");
        assertThat(odd.getLocalizedText(DC, "description", null, "x-default").getValue())
                .isEqualTo("one\ntwo\nthree");
        assertThat(odd.doesPropertyExist(EXIF, "GPSLatitude")).isFalse();
        assertThat(odd.doesPropertyExist(EXIF, "DateTimeOriginal")).isFalse();
    }
}
