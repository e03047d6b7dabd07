package quarterlight.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.DiagramRefused;

/** Every spelling of CSS that loads or runs something is refused, and what only draws is not. */
class StylesInDiagramsTest {
    private static final String HEAD =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:h=\"http://www.w3.org/1999/xhtml\" data-style=\"coupe\""
                    + " data-wheelbase-mm=\"2740\" data-length-mm=\"4690\" data-width-mm=\"1810\" data-height-mm=\"1330\">";
    private static final String VIEW = "<g data-view=\"left\" data-width-mm=\"5000\" data-height-mm=\"1500\">";

    private static void read(String svg) throws Exception {
        DiagramFile.read("own.svg", new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<style>@import 'x.css';</style>",
                "<style>@IMPORT url(x.css);</style>",
                "<style>@\\69mport 'x.css';</style>",
                "<style>@\\000069 mport 'x.css';</style>",
                "<style>@i\\mport 'x.css';</style>",
                "<style>@imp\\6f rt\"x.css\";</style>",
                "<style>/* */@/* */import 'x';@import/**/'x.css';</style>",
                "<style>/* a\nb */@import 'x.css';</style>",
                "<style>@im<!-- x -->port 'x.css';</style>",
                "<style>@im<![CDATA[port 'x.css';]]></style>",
                "<style><![CDATA[@import 'x.css';]]></style>",
                "<style>&#64;import 'x.css';</style>",
                "<style>@&#x69;mport 'x.css';</style>",
                "<style>@im<b/>port 'x.css';</style>",
                "<defs><style>@import 'x.css';</style></defs>",
                "<defs><g><style>.a{fill:url(http://x.invalid/a)}</style></g></defs>",
                "<style>.a{fill:url(http://x.invalid/a)}</style>",
                "<style>.a{fill:URL(http://x.invalid/a)}</style>",
                "<style>.a{fill:u\\72l(http://x.invalid/a)}</style>",
                "<style>.a{fill:\\75\\72\\6c(http://x.invalid/a)}</style>",
                "<style>.a{fill:\\000075rl(http://x.invalid/a)}</style>",
                "<style>.a{fill:url( \n 'http://x.invalid/a' )}</style>",
                "<style>.a{fill:url(\\68ttp://x.invalid/a)}</style>",
                "<style>.a{fill:url(/* #a */x)}</style>",
                "<style>.a{fill:u<![CDATA[rl(x]]>)}</style>",
                "<style>.a{fill:url(<![CDATA[x]]>#a)}</style>",
                "<style>.a{fill:url()}</style>",
                "<style>.a{fill:url('')}</style>",
                "<style>@font-face{font-family:a;src:url(x.woff)}</style>",
                "<style>@font-face{font-family:a;src:url(data:font/woff;base64,AA)}</style>",
                "<style>.a{background:image-set('x.png' 1x)}</style>",
                "<style>.a{background:-webkit-image-set('x.png' 1x)}</style>",
                "<style>.a{background:image('x.png')}</style>",
                "<style>.a{background:src('x.png')}</style>",
                "<style>.a{background:cross-fade(url(x) 50%, red)}</style>",
                "<style>.a{width:expression(alert(1))}</style>",
                "<style>.a{width:expre/**/ssion(alert(1));b:exp\\72 ession(1)}</style>",
                "<style>.a{b:'java\\73 cript:x'}</style>",
                "<style>/* unclosed '*/@import 'x';</style>",
                "<style>'\n@import 'x';</style>",
                "<h:style>@import 'x.css';</h:style>",
                "<h:img srcset='x.png 1x'/>",
                "<h:link rel='stylesheet' href='#x'/>",
                "<g style=\"fill:u\\72l(x)\"/>",
                "<g style=\"fill:url(x)\"/>",
                "<g fill=\"url(http://x.invalid/a#b)\"/>",
                "<g filter=\"u&#114;l(x)\"/>",
                "<g style=\"fill:red;/*;*/mask:url(&quot;x&quot;)\"/>"
            })
    void whatLoadsOrRunsIsRefused(String part) {
        assertThatThrownBy(() -> read(HEAD + part + VIEW + "</g></svg>"))
                .isInstanceOf(DiagramRefused.class)
                .satisfies(e -> assertThat(e.getMessage()).contains("not allowed"));
        assertThatThrownBy(() -> read(HEAD + VIEW + part + "</g></svg>")).isInstanceOf(DiagramRefused.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<style>.a{fill:url(#hatch)}</style>",
                "<style>.a{fill:url( '#hatch' )}</style>",
                "<style>.a{fill:url(\\23 hatch)}</style>",
                "<style>/* @import 'x'; url(x) */.a{fill:red}</style>",
                "<style>.a:hover{fill:rgb(1,2,3);transform:rotate(3deg)}</style>",
                "<style>.a{font-family:'@import url(x)'}</style>",
                "<style>@media print{.a{fill:var(--x)}}</style>",
                "<style>.import{fill:red} #url{fill:red}</style>",
                "<style>.\\@import{fill:red}</style>",
                "<style></style>",
                "<g style=\"-inkscape-font-specification:'sans-serif, Normal';fill:none\"/>",
                "<g clip-path=\"url(#c)\" transform=\"translate(1 2)\"/>",
                "<defs><style>.a{fill:#123}</style></defs>"
            })
    void whatOnlyDrawsIsTaken(String part) throws Exception {
        read(HEAD + part + VIEW + "</g></svg>");
        read(HEAD + VIEW + part + "</g></svg>");
    }
}
